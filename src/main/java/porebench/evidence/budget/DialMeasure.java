package porebench.evidence.budget;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.MeterStory;
import porebench.method.FigureName;
import porebench.method.budget.DialCorrection;
import porebench.method.budget.Omission;
import porebench.method.budget.Origin;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.DialCheck;
import porebench.method.trial.Withdrawal;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.EquipmentKind;

/** By what the known air of a dial check was made, and how far that may be wrong. */
final class DialMeasure {
    private static final double PERCENT_LITRES_PER_MILLILITRE = 0.1;

    private final MeasureLimits limits;

    DialMeasure(MeasureLimits limits) {
        this.limits = limits;
    }

    /**
     * How trials measured their water.
     *
     * @param units by cylinder, balance or vessel
     * @param days on which they were made
     */
    record Uses(Set<Withdrawal.Unit> units, List<LocalDate> days) {
        /** There are no trials to share the measure with. */
        static final Uses NONE = new Uses(Set.of(), List.of());
    }

    /**
     * Returns the measure of the dial check in force on a day.
     *
     * @param story the meter
     * @param day the day
     * @param readingPercent at which its error counts, in % air
     * @param ofTrials how the trials measured their water
     */
    Optional<DialCorrection.Measure> of(MeterStory story, LocalDate day, double readingPercent, Uses ofTrials) {
        Optional<DialCheck> check = story.dialCheckOn(day);
        Set<CheckAmount.Unit> units = check.map(DialCheck::points).orElse(List.of()).stream()
                .map(point -> point.amount())
                .filter(amount -> amount.number().signum() > 0)
                .map(CheckAmount::unit)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(CheckAmount.Unit.class)));
        if (units.isEmpty()) {
            return Optional.empty();
        }
        LocalDate checkedOn = story.dialCheckedOn(day).orElseThrow();
        double litres = story.dialOn(day).orElseThrow().scale().bowl().in(VolumeUnit.LITRE);
        double worst = 0;
        Origin origin = Origin.EQUIPMENT;
        Set<Omission> wanting = EnumSet.noneOf(Omission.class);
        for (CheckAmount.Unit unit : units) {
            LaboratoryEquipment.Limit known = limits.of(measure(unit), checkedOn);
            double limit = unit == CheckAmount.Unit.VESSELS
                    ? ofVessel(check.orElseThrow(), readingPercent, known)
                    : known.number() * (unit == CheckAmount.Unit.PERCENT ? 1 : PERCENT_LITRES_PER_MILLILITRE / litres);
            worst = Math.max(worst, limit);
            origin = MeasureLimits.least(origin, known.origin());
            if (known.isWanting()) {
                wanting.add(MeasureLimits.wanting(measure(unit)));
            }
        }
        return worst <= 0
                ? Optional.empty()
                : Optional.of(
                        new DialCorrection.Measure(worst, origin, isOfTheTrials(units, checkedOn, ofTrials), wanting));
    }

    /** By the equipment that was in use on both days; where none of the kind is known, by what the profile says. */
    private boolean isOfTheTrials(Set<CheckAmount.Unit> units, LocalDate checkedOn, Uses ofTrials) {
        boolean isOneKind = !units.contains(CheckAmount.Unit.VESSELS)
                && ofTrials.units().size() == 1
                && units.stream()
                        .map(DialMeasure::measure)
                        .collect(Collectors.toSet())
                        .equals(ofTrials.units());
        if (!isOneKind) {
            return false;
        }
        List<LocalDate> days =
                Stream.concat(Stream.of(checkedOn), ofTrials.days().stream()).toList();
        EquipmentKind kind = MeasureLimits.kind(ofTrials.units().iterator().next());
        return limits.equipment()
                .isOne(kind, days)
                .orElseGet(() ->
                        limits.profile().figure(FigureName.ONE_MEASURE).value().equals("yes"));
    }

    /** A vessel is weighed once, and all its fills are wrong by the same share. */
    private static double ofVessel(DialCheck check, double readingPercent, LaboratoryEquipment.Limit balance) {
        return check.vesselWater()
                .map(Typed<Mass>::value)
                .map(mass -> Math.abs(readingPercent) * balance.number() / mass.in(MassUnit.GRAM))
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
