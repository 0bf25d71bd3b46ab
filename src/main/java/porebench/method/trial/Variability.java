package porebench.method.trial;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.statistics.summary.CriticalRange;

/**
 * How the trials of one determination vary: do they agree, is one of them wrong, are more needed.
 *
 * <p>What is said here never leaves a trial out; a person does, with a reason.
 *
 * @param summary what they amount to, with the range check of the profile
 * @param laboratory the trials against the laboratory's own scatter; empty where that is not known well enough
 * @param outliers whether one or two lie too far out
 * @param shape whether they scatter as normal values do
 * @param stop whether they are enough
 */
public record Variability(
        DeterminationSummary summary,
        Optional<LaboratoryCheck> laboratory,
        Outliers outliers,
        Shape shape,
        StopRule stop) {
    /** Something to look into. */
    public enum Alarm {
        /** The range is wider than the profile's repeatability allows. */
        RANGE,
        /** The range is wider than the laboratory's other determinations allow. */
        LABORATORY,
        /** A trial, or two, lie farther out than chance explains. */
        OUTLIER,
        /** The trials do not scatter as normal values do. */
        SHAPE
    }

    /**
     * Judges the trials that count.
     *
     * @param factors their factors, in % air, in the order of the trials
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     * @param profile whose rounding, repeatability and limits hold
     * @param elsewhere how trials scatter elsewhere in the laboratory, on this type of meter
     * @return what is to be said, or empty when no trial counts
     * @throws IllegalArgumentException if the division is not greater than 0 or a factor is not finite
     */
    public static Optional<Variability> of(
            double[] factors, MeterType type, double divisionPercent, Profile profile, ScatterElsewhere elsewhere) {
        return DeterminationSummary.of(factors, type, divisionPercent, profile).map(summary -> {
            Optional<LaboratoryCheck> check = LaboratoryCheck.of(factors, type, divisionPercent, elsewhere.pooled());
            return new Variability(
                    summary,
                    check,
                    Outliers.of(divisionPercent, Scatter.ofTheDial(type, divisionPercent), factors),
                    Shape.of(divisionPercent, factors),
                    StopRule.of(
                            summary.summary(),
                            Scatter.of(summary.summary(), type, divisionPercent, elsewhere),
                            profile));
        });
    }

    /** Returns everything to look into; empty when all is well. */
    public Set<Alarm> alarms() {
        Set<Alarm> alarms = EnumSet.noneOf(Alarm.class);
        if (!summary.rangeCheck().map(CriticalRange.RangeCheck::passes).orElse(true)) {
            alarms.add(Alarm.RANGE);
        }
        if (!laboratory.map(LaboratoryCheck::passes).orElse(true)) {
            alarms.add(Alarm.LABORATORY);
        }
        if (outliers.suspects().isPresent()) {
            alarms.add(Alarm.OUTLIER);
        }
        if (shape.isOdd()) {
            alarms.add(Alarm.SHAPE);
        }
        return alarms;
    }
}
