package porebench.method.trial;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.WaterDensity;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Temperature;
import porebench.quantity.Typed;
import porebench.quantity.Volume;

/**
 * The aggregate correction factor of one trial, and what is wrong or doubtful about it.
 *
 * <p>Type A: G = h1 - h2. Type B: G = A1 - 100 Vw / S, with A1 the reading in % air, Vw the water withdrawn and S the bowl
 * volume in the same unit; the result is in % air. Where the meter was calibrated, A1 is the reading corrected along the
 * curve of the dial and S the volume in force on the day.
 *
 * <p>Source: ASTM C231, clause 6 (recalled), and the same in AASHTO T 152. Differences from the source: none.
 *
 * @param factorPercent G in % air, not rounded; empty when it cannot be computed, as from a reading that
 *     cannot be. It may be negative, which is doubtful.
 * @param withdrawnPercent Type B: the water withdrawn in % of the bowl; empty for Type A or when not known
 * @param uncorrectedPercent G in % air with the reading and the bowl volume as typed, not rounded; the same number as the
 *     factor where nothing was corrected
 * @param corrections what the calibrations of the meter said
 * @param problems errors void the trial, warnings are doubts
 */
public record TrialFactor(
        OptionalDouble factorPercent,
        OptionalDouble withdrawnPercent,
        OptionalDouble uncorrectedPercent,
        Corrections corrections,
        List<Problem> problems) {
    private static final BigDecimal WHOLE = BigDecimal.valueOf(100);

    public TrialFactor {
        problems = List.copyOf(problems);
    }

    /** Computes one trial from its readings as typed. */
    public static TrialFactor of(Readings readings, Expected expected, Profile profile) {
        return of(readings, Corrections.NONE, expected, profile);
    }

    /**
     * Computes one trial.
     *
     * @param readings what was read
     * @param corrections what the calibrations of the meter say about it
     * @param expected what should have been, for the doubts
     * @param profile whose tolerances hold
     */
    public static TrialFactor of(Readings readings, Corrections corrections, Expected expected, Profile profile) {
        List<Problem> problems = new ArrayList<>();
        if (readings.bowl().value().cubicMetres() <= 0) {
            problems.add(Problem.error("bowl", "trial.bowl-not-positive", readings.bowl()));
        }
        problems.addAll(TrialLimits.check(readings));
        if (readings.leak()) {
            problems.add(Problem.error("leak", "trial.leak").of(Problem.Kind.VOID));
        }
        checkNotNegative(problems, "fine", readings.fine().map(Typed::number));
        checkNotNegative(problems, "coarse", readings.coarse().map(Typed::number));
        checkNotNegative(problems, "soak", readings.soakMinutes());
        OptionalDouble typed = readings.meterType() == MeterType.A
                ? typeA(readings, problems)
                : typeB(readings, Corrections.NONE, new ArrayList<>());
        OptionalDouble withdrawn = readings.meterType() == MeterType.A
                ? OptionalDouble.empty()
                : withdrawnPercent(readings, bowl(readings, corrections), problems);
        OptionalDouble factor =
                readings.meterType() == MeterType.A ? typed : lessWithdrawn(readings, corrections, withdrawn, problems);
        new TrialDoubts(readings, corrections, expected, profile, factor, withdrawn).addTo(problems);
        return new TrialFactor(factor, withdrawn, typed, corrections, problems);
    }

    /** Returns this with more doubts, such as one about the meter. */
    public TrialFactor alsoDoubted(List<Problem> doubts) {
        return new TrialFactor(
                factorPercent,
                withdrawnPercent,
                uncorrectedPercent,
                corrections,
                Stream.concat(problems.stream(), doubts.stream()).toList());
    }

    /** Returns by how much the calibrations of the meter moved G, in % air; empty where they said nothing or there is no G. */
    public OptionalDouble correctionPercent() {
        return corrections.equals(Corrections.NONE) || factorPercent.isEmpty() || uncorrectedPercent.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(factorPercent.getAsDouble() - uncorrectedPercent.getAsDouble());
    }

    private static double bowl(Readings readings, Corrections corrections) {
        return corrections.bowl().orElseGet(() -> readings.bowl().value()).cubicMetres();
    }

    /** Returns whether the trial counts, as far as its readings tell: a person may still strike it. */
    public boolean counts() {
        return factorPercent.isPresent() && !Problem.anyError(problems);
    }

    private static OptionalDouble typeA(Readings readings, List<Problem> problems) {
        Optional<BigDecimal> h1 = readings.h1Percent();
        Optional<BigDecimal> h2 = readings.h2Percent();
        if (h1.isEmpty()) {
            missing(problems, "h1");
        }
        if (h2.isEmpty()) {
            missing(problems, "h2");
        }
        return isPossible(h1) && isPossible(h2)
                ? OptionalDouble.of(h1.get().subtract(h2.get()).doubleValue())
                : OptionalDouble.empty();
    }

    private static OptionalDouble typeB(Readings readings, Corrections corrections, List<Problem> problems) {
        OptionalDouble withdrawn = withdrawnPercent(readings, bowl(readings, corrections), problems);
        return lessWithdrawn(readings, corrections, withdrawn, problems);
    }

    private static OptionalDouble lessWithdrawn(
            Readings readings, Corrections corrections, OptionalDouble withdrawn, List<Problem> problems) {
        if (readings.gaugePercent().isEmpty()) {
            missing(problems, "gauge");
            return OptionalDouble.empty();
        }
        if (withdrawn.isEmpty() || !isPossible(readings.gaugePercent())) {
            return OptionalDouble.empty();
        }
        double reading = corrections
                .gauge()
                .map(Corrections.Gauge::truePercent)
                .orElseGet(() -> readings.gaugePercent().get().doubleValue());
        return OptionalDouble.of(reading - withdrawn.getAsDouble());
    }

    /** Returns whether a reading is there and on a scale at all, from 0 to 100 % air; from another no factor is computed. */
    static boolean isPossible(Optional<BigDecimal> reading) {
        return reading.filter(percent -> percent.signum() >= 0 && percent.compareTo(WHOLE) <= 0)
                .isPresent();
    }

    private static void missing(List<Problem> problems, String field) {
        problems.add(Problem.error(field, "trial.reading-missing", new Problem.Word(field))
                .of(Problem.Kind.NOT_MEASURED));
    }

    private static void checkNotNegative(List<Problem> problems, String field, Optional<BigDecimal> number) {
        number.filter(value -> value.signum() < 0)
                .ifPresent(
                        value -> problems.add(Problem.error(field, "trial.negative", new Problem.Word(field), value)));
    }

    private static OptionalDouble withdrawnPercent(Readings readings, double bowl, List<Problem> problems) {
        if (readings.withdrawal().isEmpty()) {
            missing(problems, "withdrawn");
            return OptionalDouble.empty();
        }
        Withdrawal withdrawal = readings.withdrawal().get();
        double number = withdrawal.number().doubleValue();
        if (number < 0) {
            problems.add(Problem.error("withdrawn", "trial.withdrawal-negative", withdrawal.number()));
            return OptionalDouble.empty();
        }
        if (bowl <= 0) {
            return OptionalDouble.empty();
        }
        OptionalDouble percent = switch (withdrawal.unit()) {
            case PERCENT -> OptionalDouble.of(number);
            case MILLILITRE -> OptionalDouble.of(100 * number * 1e-6 / bowl);
            case GRAM -> byMass(number, bowl, readings, problems);
        };
        if (percent.isPresent() && percent.getAsDouble() > 100) {
            // The whole bowl stands beside it so that the figure is told apart from it.
            problems.add(Problem.error("withdrawn", "trial.withdrawal-exceeds-bowl", percent.getAsDouble(), 100.0));
            return OptionalDouble.empty();
        }
        return percent;
    }

    private static OptionalDouble byMass(double grams, double bowl, Readings readings, List<Problem> problems) {
        if (readings.waterCelsius().isEmpty()) {
            problems.add(Problem.error("waterTemperature", "trial.water-temperature-missing")
                    .of(Problem.Kind.NOT_MEASURED));
            return OptionalDouble.empty();
        }
        Temperature water = new Temperature(readings.waterCelsius().get().doubleValue());
        if (!WaterDensity.covers(water)) {
            return OptionalDouble.empty();
        }
        Volume volume = Mass.of(grams, MassUnit.GRAM).at(WaterDensity.at(water));
        return OptionalDouble.of(100 * volume.cubicMetres() / bowl);
    }
}
