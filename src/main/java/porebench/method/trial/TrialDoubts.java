package porebench.method.trial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.RoundingRule;
import porebench.method.WaterDensity;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Temperature;
import porebench.quantity.VolumeUnit;

/**
 * The doubts about one trial: suspicious but possible, to be kept or struck by a person.
 *
 * <p>Limits are compared without the noise of binary fractions, so that a value at its limit counts as within it.
 */
final class TrialDoubts {
    private final Readings readings;
    private final Expected expected;
    private final Profile profile;
    private final OptionalDouble factor;
    private final OptionalDouble withdrawn;

    TrialDoubts(
            Readings readings, Expected expected, Profile profile, OptionalDouble factor, OptionalDouble withdrawn) {
        this.readings = readings;
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
        scale(problems, "gauge", readings.gaugePercent());
        scale(problems, "h1", readings.h1Percent());
        scale(problems, "h2", readings.h2Percent());
    }

    private void bowl(List<Problem> problems) {
        double litres = readings.bowl().value().in(VolumeUnit.LITRE);
        double least = profile.number(FigureName.LEAST_BOWL);
        if (litres > 0 && above(least, litres)) {
            problems.add(Problem.warning("bowl", "trial.bowl-small", litres, least, profile.title()));
        }
    }

    private void factor(List<Problem> problems, double g) {
        double high = profile.number(FigureName.ADVISE_VOLUMETRIC_FROM);
        if (above(0, g)) {
            problems.add(Problem.warning("factor", "trial.factor-negative", g));
        } else if (!above(high, g)) {
            problems.add(Problem.warning(
                    "factor",
                    "trial.factor-high",
                    g,
                    high,
                    profile.figure(FigureName.ADVISE_VOLUMETRIC_FROM).clause()));
        }
    }

    private void masses(List<Problem> problems) {
        if (expected.fine().isEmpty() || expected.coarse().isEmpty()) {
            return;
        }
        if (readings.fine().isEmpty() || readings.coarse().isEmpty()) {
            problems.add(Problem.warning("masses", "trial.masses-missing"));
            return;
        }
        Mass fine = readings.fine().get().value();
        Mass coarse = readings.coarse().get().value();
        double tolerance = profile.number(FigureName.MASS_TOLERANCE);
        boolean fineOff = off(problems, "fine", fine, expected.fine().get(), tolerance);
        boolean coarseOff = off(problems, "coarse", coarse, expected.coarse().get(), tolerance);
        double actual = fine.plus(coarse).kilograms();
        if ((fineOff || coarseOff) && factor.isPresent() && actual > 0) {
            double right = expected.fine().get().plus(expected.coarse().get()).kilograms();
            problems.add(
                    Problem.warning("masses", "trial.factor-at-right-mass", factor.getAsDouble() * right / actual));
        }
    }

    private static boolean off(List<Problem> problems, String field, Mass actual, Mass target, double tolerance) {
        double percent = target.kilograms() > 0
                ? 100 * (actual.kilograms() - target.kilograms()) / target.kilograms()
                : actual.kilograms() > 0 ? 100 : 0;
        boolean off = above(Math.abs(percent), tolerance);
        if (off) {
            problems.add(Problem.warning(
                    field,
                    "trial.mass-off-target",
                    field,
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
            problems.add(Problem.warning("soak", "trial.soak-missing", right));
            return;
        }
        double actual = readings.soakMinutes().get().doubleValue();
        if (above(right - tolerance, actual)) {
            problems.add(Problem.warning("soak", "trial.soak-short", actual, right, tolerance));
        } else if (above(actual, right + tolerance)) {
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
        if (above(Math.abs(withdrawn.getAsDouble() - target), tolerance)) {
            problems.add(
                    Problem.warning("withdrawn", "trial.withdrawal-far", withdrawn.getAsDouble(), target, tolerance));
        }
    }

    private void water(List<Problem> problems) {
        readings.waterCelsius().ifPresent(celsius -> {
            if (WaterDensity.covers(new Temperature(celsius.doubleValue()))) {
                return;
            }
            boolean needed = readings.withdrawal().isPresent()
                    && readings.withdrawal().get().unit() == Withdrawal.Unit.GRAM;
            Problem problem = Problem.warning(
                    "waterTemperature",
                    "water.temperature-out-of-range",
                    celsius,
                    WaterDensity.LOWEST_CELSIUS,
                    WaterDensity.HIGHEST_CELSIUS);
            problems.add(
                    needed
                            ? Problem.error(
                                    problem.field(),
                                    problem.code(),
                                    problem.values().toArray())
                            : problem);
        });
    }

    private void scale(List<Problem> problems, String field, Optional<BigDecimal> reading) {
        if (reading.isEmpty()) {
            return;
        }
        double value = reading.get().doubleValue();
        double top = expected.scaleTopPercent().orElse(profile.number(FigureName.SCALE_TOP));
        if (value < 0 || value > 100) {
            problems.add(Problem.error(field, "trial.reading-impossible", field, reading.get()));
        } else if (above(value, top)) {
            problems.add(Problem.warning(field, "trial.reading-off-scale", field, reading.get(), top));
        }
    }

    private static boolean above(double value, double limit) {
        return RoundingRule.withoutNoise(value - limit)
                        .setScale(9, RoundingMode.HALF_EVEN)
                        .signum()
                > 0;
    }
}
