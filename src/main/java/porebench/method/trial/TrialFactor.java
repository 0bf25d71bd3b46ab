package porebench.method.trial;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * volume in the same unit; the result is in % air.
 *
 * <p>Source: ASTM C231, clause 6 (recalled), and the same in AASHTO T 152. Differences from the source: none.
 *
 * @param factorPercent G in % air, not rounded; empty when it cannot be computed. It may be negative, which is doubtful.
 * @param withdrawnPercent Type B: the water withdrawn in % of the bowl; empty for Type A or when not known
 * @param problems errors void the trial, warnings are doubts
 */
public record TrialFactor(OptionalDouble factorPercent, OptionalDouble withdrawnPercent, List<Problem> problems) {
    public TrialFactor {
        problems = List.copyOf(problems);
    }

    /**
     * Computes one trial.
     *
     * @param readings what was read
     * @param expected what should have been, for the doubts
     * @param profile whose tolerances hold
     */
    public static TrialFactor of(Readings readings, Expected expected, Profile profile) {
        List<Problem> problems = new ArrayList<>();
        if (readings.bowl().value().cubicMetres() <= 0) {
            problems.add(Problem.error("bowl", "trial.bowl-not-positive", readings.bowl()));
        }
        if (readings.leak()) {
            problems.add(Problem.error("leak", "trial.leak"));
        }
        checkNotNegative(problems, "fine", readings.fine().map(Typed::number));
        checkNotNegative(problems, "coarse", readings.coarse().map(Typed::number));
        checkNotNegative(problems, "soak", readings.soakMinutes());
        OptionalDouble withdrawn =
                readings.meterType() == MeterType.B ? withdrawnPercent(readings, problems) : OptionalDouble.empty();
        OptionalDouble factor =
                readings.meterType() == MeterType.A ? typeA(readings, problems) : typeB(readings, withdrawn, problems);
        new TrialDoubts(readings, expected, profile, factor, withdrawn).addTo(problems);
        return new TrialFactor(factor, withdrawn, problems);
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
        return h1.isPresent() && h2.isPresent()
                ? OptionalDouble.of(h1.get().subtract(h2.get()).doubleValue())
                : OptionalDouble.empty();
    }

    private static OptionalDouble typeB(Readings readings, OptionalDouble withdrawn, List<Problem> problems) {
        if (readings.gaugePercent().isEmpty()) {
            missing(problems, "gauge");
            return OptionalDouble.empty();
        }
        if (withdrawn.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(readings.gaugePercent().get().doubleValue() - withdrawn.getAsDouble());
    }

    private static void missing(List<Problem> problems, String field) {
        problems.add(Problem.error(field, "trial.reading-missing", new Problem.Word(field)));
    }

    private static void checkNotNegative(List<Problem> problems, String field, Optional<BigDecimal> number) {
        number.filter(value -> value.signum() < 0)
                .ifPresent(
                        value -> problems.add(Problem.error(field, "trial.negative", new Problem.Word(field), value)));
    }

    private static OptionalDouble withdrawnPercent(Readings readings, List<Problem> problems) {
        if (readings.withdrawal().isEmpty()) {
            missing(problems, "withdrawn");
            return OptionalDouble.empty();
        }
        Withdrawal withdrawal = readings.withdrawal().get();
        double number = withdrawal.number().doubleValue();
        double bowl = readings.bowl().value().cubicMetres();
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
        percent.ifPresent(p -> {
            if (p > 100) {
                problems.add(Problem.error("withdrawn", "trial.withdrawal-exceeds-bowl", p));
            }
        });
        return percent;
    }

    private static OptionalDouble byMass(double grams, double bowl, Readings readings, List<Problem> problems) {
        if (readings.waterCelsius().isEmpty()) {
            problems.add(Problem.error("waterTemperature", "trial.water-temperature-missing"));
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
