package porebench.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.method.FigureName;
import porebench.method.budget.Dial;
import porebench.method.budget.Origin;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.DialCheck;
import porebench.method.trial.Withdrawal;
import porebench.quantity.Mass;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;

/** By what the known air of a dial check was made, and how far that may be wrong. */
final class DialMeasure {
    private static final double PERCENT_LITRES_PER_MILLILITRE = 0.1;

    private final MeasureLimits limits;

    DialMeasure(MeasureLimits limits) {
        this.limits = limits;
    }

    /**
     * Returns the measure of the dial check in force on a day.
     *
     * @param story the meter
     * @param day the day
     * @param readingPercent at which its error counts, in % air
     * @param ofTrials how the trials measured their water; empty where there are none to share it with
     */
    Optional<Dial.Measure> of(MeterStory story, LocalDate day, double readingPercent, Set<Withdrawal.Unit> ofTrials) {
        Optional<DialCheck> check = story.dialCheckOn(day);
        Set<CheckAmount.Unit> units = check.map(DialCheck::points).orElse(List.of()).stream()
                .map(point -> point.amount())
                .filter(amount -> amount.number().signum() > 0)
                .map(CheckAmount::unit)
                .collect(Collectors.toSet());
        if (units.isEmpty()) {
            return Optional.empty();
        }
        double litres = story.dialOn(day).orElseThrow().scale().bowl().in(VolumeUnit.LITRE);
        double worst = 0;
        boolean isAssumed = false;
        for (CheckAmount.Unit unit : units) {
            double limit = unit == CheckAmount.Unit.VESSELS
                    ? ofVessel(check.orElseThrow(), readingPercent)
                    : limits.of(measure(unit))
                            * (unit == CheckAmount.Unit.PERCENT ? 1 : PERCENT_LITRES_PER_MILLILITRE / litres);
            worst = Math.max(worst, limit);
            isAssumed |= limits.origin(measure(unit)) == Origin.ASSUMED;
        }
        boolean isOne = isOneMeasure()
                && !units.contains(CheckAmount.Unit.VESSELS)
                && ofTrials.size() == 1
                && units.stream()
                        .map(DialMeasure::measure)
                        .collect(Collectors.toSet())
                        .equals(ofTrials);
        return worst <= 0
                ? Optional.empty()
                : Optional.of(new Dial.Measure(worst, isAssumed ? Origin.ASSUMED : Origin.LABORATORY, isOne));
    }

    private boolean isOneMeasure() {
        return limits.profile().figure(FigureName.ONE_MEASURE).value().equals("yes");
    }

    /** A vessel is weighed once, and all its fills are wrong by the same share. */
    private double ofVessel(DialCheck check, double readingPercent) {
        return check.vesselWater()
                .map(Typed<Mass>::value)
                .map(mass -> Math.abs(readingPercent) * limits.balance().kilograms() / mass.kilograms())
                .orElse(0.0);
    }

    private static Withdrawal.Unit measure(CheckAmount.Unit unit) {
        return switch (unit) {
            case MILLILITRE -> Withdrawal.Unit.MILLILITRE;
            case GRAM, VESSELS -> Withdrawal.Unit.GRAM;
            case PERCENT -> Withdrawal.Unit.PERCENT;
        };
    }
}
