package porebench.method.trial;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.FigureName;
import porebench.method.Limit;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.WaterDensity;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Slack;
import porebench.quantity.Temperature;
import porebench.quantity.VolumeUnit;

/**
 * The doubts about one trial: suspicious but possible, to be kept or struck by a person.
 *
 * <p>A value at its limit counts as within it, on paper and here: what binary fractions add is far below any reading.
 */
final class TrialDoubts {

    private final Readings readings;
    private final Corrections corrections;
    private final Expected expected;
    private final Profile profile;
    private final OptionalDouble factor;
    private final OptionalDouble withdrawn;

    TrialDoubts(
            Readings readings,
            Corrections corrections,
            Expected expected,
            Profile profile,
            OptionalDouble factor,
            OptionalDouble withdrawn) {
        this.readings = readings;
        this.corrections = corrections;
        this.expected = expected;
        this.profile = profile;
        this.factor = factor;
        this.withdrawn = withdrawn;
    }

    void addTo(List<Problem> problems) {
        bowl(problems);
        factor.ifPresent(g -> factor(problems, g));
        masses(problems);
        soak(problems);
        withdrawal(problems);
        water(problems);
        boolean typeA = readings.meterType() == MeterType.A;
        reading(problems, "gauge", readings.gaugePercent(), !typeA);
        reading(problems, "h1", readings.h1Percent(), typeA);
        reading(problems, "h2", readings.h2Percent(), typeA);
        calibration(problems);
    }

    private void bowl(List<Problem> problems) {
        double litres = readings.bowl().value().in(VolumeUnit.LITRE);
        double least = profile.number(FigureName.LEAST_BOWL);
        if (litres > 0 && Slack.isBelow(litres, least)) {
            problems.add(Problem.warning("bowl", "trial.bowl-small", litres, least, profile.title()));
        }
    }

    private void factor(List<Problem> problems, double g) {
        double high = profile.number(FigureName.ADVISE_VOLUMETRIC_FROM);
        if (Slack.isBelow(g, 0)) {
            problems.add(Problem.warning("factor", "trial.factor-negative", g));
        } else if (!Slack.isBelow(g, high)) {
            problems.add(Problem.warning(
                    "factor",
                    "trial.factor-high",
                    g,
                    high,
                    new Problem.Clause(
                            profile.figure(FigureName.ADVISE_VOLUMETRIC_FROM).clause())));
        }
    }

    private void masses(List<Problem> problems) {
        if (expected.fine().isEmpty() || expected.coarse().isEmpty()) {
            return;
        }
        if (readings.fine().isEmpty() || readings.coarse().isEmpty()) {
            problems.add(Problem.warning("masses", "trial.masses-missing").of(Problem.Kind.NOT_MEASURED));
            return;
        }
        Mass fine = readings.fine().get().value();
        Mass coarse = readings.coarse().get().value();
        double tolerance = profile.number(FigureName.MASS_TOLERANCE);
        boolean fineOff = off(problems, "fine", fine, expected.fine().get(), tolerance);
        boolean coarseOff = off(problems, "coarse", coarse, expected.coarse().get(), tolerance);
        double actual = fine.plus(coarse).kilograms();
        if ((fineOff || coarseOff) && factor.isPresent() && actual > 0) {
            // The factor follows the amount of stone; how much of it is due to either aggregate is not known.
            double right = expected.fine().get().plus(expected.coarse().get()).kilograms();
            problems.add(
                    Problem.warning("masses", "trial.factor-at-right-mass", factor.getAsDouble() * right / actual));
        }
    }

    private static boolean off(List<Problem> problems, String field, Mass actual, Mass target, double tolerance) {
        double percent = target.kilograms() > 0
                ? 100 * (actual.kilograms() - target.kilograms()) / target.kilograms()
                : actual.kilograms() > 0 ? 100 : 0;
        boolean off = Slack.isAbove(Math.abs(percent), tolerance);
        if (off) {
            problems.add(Problem.warning(
                    field,
                    "trial.mass-off-target",
                    new Problem.Word(field),
                    actual.in(MassUnit.GRAM),
                    target.in(MassUnit.GRAM),
                    percent,
                    tolerance));
        }
        return off;
    }

    private void soak(List<Problem> problems) {
        if (expected.soakMinutes().isEmpty()) {
            return;
        }
        double right = expected.soakMinutes().getAsDouble();
        double tolerance = profile.number(FigureName.SOAK_TOLERANCE);
        if (readings.soakMinutes().isEmpty()) {
            problems.add(Problem.warning("soak", "trial.soak-missing", right).of(Problem.Kind.NOT_MEASURED));
            return;
        }
        double actual = readings.soakMinutes().get().doubleValue();
        if (Slack.isBelow(actual, right - tolerance)) {
            problems.add(Problem.warning("soak", "trial.soak-short", actual, right, tolerance));
        } else if (Slack.isAbove(actual, right + tolerance)) {
            problems.add(Problem.warning("soak", "trial.soak-long", actual, right, tolerance));
        }
    }

    private void withdrawal(List<Problem> problems) {
        if (readings.meterType() == MeterType.A) {
            if (readings.withdrawal().isPresent()) {
                problems.add(Problem.warning("withdrawn", "trial.withdrawal-on-type-a"));
            }
            return;
        }
        if (withdrawn.isEmpty() || expected.targetAirPercent().isEmpty()) {
            return;
        }
        double target = expected.targetAirPercent().getAsDouble();
        double tolerance = profile.number(FigureName.WITHDRAWAL_TOLERANCE);
        if (Slack.isAbove(Math.abs(withdrawn.getAsDouble() - target), tolerance)) {
            problems.add(
                    Problem.warning("withdrawn", "trial.withdrawal-far", withdrawn.getAsDouble(), target, tolerance));
        }
    }

    private void water(List<Problem> problems) {
        readings.waterCelsius().ifPresent(celsius -> {
            if (!Limit.WATER.holds(celsius) || WaterDensity.covers(new Temperature(celsius.doubleValue()))) {
                return;
            }
            boolean needed = readings.meterType() == MeterType.B
                    && readings.withdrawal()
                            .map(water -> water.unit() == Withdrawal.Unit.GRAM)
                            .orElse(false);
            Problem outside = Problem.error(
                    "waterTemperature",
                    "water.temperature-out-of-range",
                    celsius,
                    WaterDensity.LOWEST_CELSIUS,
                    WaterDensity.HIGHEST_CELSIUS);
            problems.add(needed ? outside : outside.asWarning());
        });
    }

    private void reading(List<Problem> problems, String field, Optional<BigDecimal> reading, boolean isUsed) {
        if (reading.isEmpty()) {
            return;
        }
        Problem.Word name = new Problem.Word(field);
        double value = reading.get().doubleValue();
        double top = expected.scaleTopPercent().orElse(profile.number(FigureName.SCALE_TOP));
        if (!isUsed) {
            problems.add(Problem.warning(
                    field, "trial.reading-not-used", name, readings.meterType().name()));
        } else if (!TrialFactor.isPossible(reading)) {
            problems.add(Problem.error(field, "trial.reading-impossible", name, reading.get()));
        } else if (Slack.isAbove(value, top)) {
            problems.add(Problem.warning(field, "trial.reading-off-scale", name, reading.get(), top));
        }
    }

    private void calibration(List<Problem> problems) {
        corrections
                .bowl()
                .filter(bowl -> !readings.bowl().agreesWith(bowl))
                .ifPresent(bowl -> problems.add(Problem.warning(
                        "bowl", "trial.bowl-not-in-force", readings.bowl(), bowl.in(VolumeUnit.LITRE))));
        corrections
                .gauge()
                .filter(Corrections.Gauge::isExtrapolated)
                .ifPresent(gauge -> problems.add(Problem.warning(
                        "gauge",
                        "trial.gauge-beyond-checks",
                        readings.gaugePercent().orElseThrow())));
    }
}
