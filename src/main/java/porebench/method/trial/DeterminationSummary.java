package porebench.method.trial;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.MeanInterval;
import porebench.statistics.summary.Summary;

/**
 * What the trials of one determination say together.
 *
 * <p>Only trials that count enter: neither void nor struck. The factor is their mean, rounded once by the profile. The
 * expanded uncertainty (95 %) is the root of two squares: that of t s / sqrt(n), the scatter of the mean, and that of what the
 * reading of the scale leaves open at 95 %; the reading is not divided by n, because trials that all land on the same division
 * share its error. Each part is expanded by itself: with effective degrees of freedom two trials covered 86 to 93 in a hundred.
 * It is never narrower than the interval. Meter calibration and masses are not in it.
 *
 * <p>Source: range check by ASTM C670 (recalled); uncertainty by JCGM 100:2008, clauses 4 and 5 (recalled).
 * Differences from the source: the parts are expanded one by one, and not by annex G.
 *
 * @param summary count, mean, standard deviation and range of the factors, in % air
 * @param interval the 95 % t interval of the mean, with a standard deviation of no less than the division's and never narrower
 *     than the rounding that all trials share; empty for a single trial
 * @param rangeCheck the range against its limit; empty for a single trial
 * @param reportedPercent the factor as reported, in % air
 * @param expandedUncertaintyPercent U at 95 %, in % air; empty for a single trial
 * @param doubts what a person should look at before issuing
 */
public record DeterminationSummary(
        Summary summary,
        Optional<MeanInterval> interval,
        Optional<CriticalRange.RangeCheck> rangeCheck,
        BigDecimal reportedPercent,
        OptionalDouble expandedUncertaintyPercent,
        List<Problem> doubts) {
    private static final double CONFIDENCE = 0.95;

    public DeterminationSummary {
        doubts = List.copyOf(doubts);
    }

    /**
     * Summarises the trials that count.
     *
     * @param factors their factors, in % air, in the order of the trials
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     * @param profile whose rounding, repeatability and limits hold
     * @return the summary, or empty when no trial counts
     * @throws IllegalArgumentException if the division is not greater than 0 or a factor is not finite
     */
    public static Optional<DeterminationSummary> of(
            double[] factors, MeterType type, double divisionPercent, Profile profile) {
        Require.positive("divisionPercent", divisionPercent);
        if (factors.length == 0) {
            return Optional.empty();
        }
        Summary summary = Summary.of(factors);
        Optional<CriticalRange.RangeCheck> rangeCheck = summary.count() < 2
                ? Optional.empty()
                : Optional.of(CriticalRange.check(
                        summary.range(), summary.count(), profile.number(FigureName.REPEATABILITY)));
        return Optional.of(new DeterminationSummary(
                summary,
                interval(summary, type, divisionPercent),
                rangeCheck,
                profile.factorRounding().round(summary.mean()),
                expanded(summary, type, divisionPercent),
                doubts(summary, rangeCheck, profile)));
    }

    private static Optional<MeanInterval> interval(Summary summary, MeterType type, double division) {
        return summary.count() < 2
                ? Optional.empty()
                : Optional.of(new MeanInterval(
                        summary.mean(),
                        Math.max(ofChance(summary, type, division), Scatter.sharedRounding(type, division)),
                        CONFIDENCE));
    }

    private static double ofChance(Summary summary, MeterType type, double division) {
        double deviation = Math.max(summary.standardDeviation().orElseThrow(), Scatter.ofTheDial(type, division));
        return new StudentT(summary.count() - 1).coverageFactor(CONFIDENCE) * deviation / Math.sqrt(summary.count());
    }

    private static OptionalDouble expanded(Summary summary, MeterType type, double division) {
        return summary.count() < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Math.hypot(ofChance(summary, type, division), Scatter.sharedRounding(type, division)));
    }

    private static List<Problem> doubts(
            Summary summary, Optional<CriticalRange.RangeCheck> rangeCheck, Profile profile) {
        List<Problem> doubts = new ArrayList<>();
        int least = profile.count(FigureName.LEAST_TRIALS);
        if (summary.count() < least) {
            doubts.add(Problem.warning("trials", "determination.few-trials", summary.count(), least)
                    .of(Problem.Kind.TOO_FEW));
        }
        rangeCheck.filter(check -> !check.passes()).ifPresent(check -> {
            doubts.add(Problem.warning(
                    "trials", "determination.range-too-wide", summary.range(), summary.count(), check.limit()));
        });
        if (Slack.isBelow(summary.mean(), 0)) {
            doubts.add(Problem.warning("factor", "determination.factor-negative", summary.mean()));
        }
        double high = profile.number(FigureName.ADVISE_VOLUMETRIC_FROM);
        double usual = profile.number(FigureName.USUAL_FACTOR_BELOW);
        if (!Slack.isBelow(summary.mean(), high)) {
            doubts.add(Problem.warning("factor", "determination.factor-high", summary.mean(), high));
        } else if (!Slack.isBelow(summary.mean(), usual)) {
            doubts.add(Problem.warning("factor", "determination.factor-unusual", summary.mean(), usual));
        }
        return doubts;
    }
}
