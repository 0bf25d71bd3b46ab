package porebench.method.trial;

import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.quantity.Symbolic;
import porebench.statistics.distribution.ChiSquare;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.Summary;

/**
 * Whether the trials of a determination are enough, or how many more are to be expected.
 *
 * <p>Enough are as many as the profile asks for, once the 95 % interval of their mean, t s / sqrt(n), is no wider to either
 * side than the profile's half-width. The number is an expectation that moves with every trial, and whoever stops at the first
 * narrow interval stops too early now and then: {@link #STATED_CONFIDENCE} is what is stated of the mean.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2.2 (the number of values that a half-width takes);
 * recalled. Differences from the source: the scatter is that of {@link Scatter}, and it is asked anew after each trial.
 *
 * @param verdict what to do
 * @param moreTrials how many more trials are expected; 0 when they are enough; out of reach, what it takes at the very least
 * @param trialsInAll how many that makes
 * @param forTheCountOnly whether more are asked for only because the profile wants a least number
 * @param halfWidthPercent of the interval now, in % air; empty while no scatter is known
 * @param wantedPercent the half-width that the profile asks for, in % air
 * @param scatter the scatter reckoned with; empty for a single trial when the laboratory's is not known
 * @param risks how sure the plan is; empty when nothing can be planned or the division of the scale decides
 * @param next what one more trial could do to the card; empty while no scatter is known
 */
public record StopRule(
        Advice verdict,
        int moreTrials,
        int trialsInAll,
        boolean forTheCountOnly,
        OptionalDouble halfWidthPercent,
        double wantedPercent,
        Optional<Scatter> scatter,
        Optional<Risks> risks,
        Optional<NextTrial> next) {
    /** More trials than this are not a plan. Common sense, no source. */
    public static final int MOST_TRIALS = 30;

    /**
     * The confidence that is stated of a mean whose 95 % interval is narrow enough. It is lower than 95 % because whoever looks
     * after each trial stops at a lucky moment now and then, and because a mix may scatter up to twice as much as all others:
     * the least that the simulations in docs/variability.md found, rounded down.
     */
    public static final double STATED_CONFIDENCE = 0.9;

    /** What to do. */
    public enum Advice implements Symbolic {
        /** No more trials are needed. */
        ENOUGH,
        /** So many more are expected. */
        MORE,
        /** One more at least: a single trial shows no scatter, and the laboratory's is not known. */
        NOT_YET_KNOWN,
        /** The scatter is so wide that {@link #MOST_TRIALS} trials would not be enough. */
        OUT_OF_REACH;
    }

    /**
     * How sure a plan is, given how well the scatter is known.
     *
     * @param within the confidence that the mean of all trials of the plan lies within the half-width of the mean of very many:
     *     {@link #STATED_CONFIDENCE}
     * @param tooFew the probability, by chi-square, that the true scatter is wider than the plan's number of trials is enough
     *     for
     * @param oneLessWouldDo the probability, by chi-square, that the true scatter is so narrow that one trial less would have
     *     been enough; empty when the profile asks for as many anyway
     */
    public record Risks(double within, double tooFew, OptionalDouble oneLessWouldDo) {
        public Risks {
            Require.within("within", within, 0, 1);
            Require.within("tooFew", tooFew, 0, 1);
            oneLessWouldDo.ifPresent(value -> Require.within("oneLessWouldDo", value, 0, 1));
        }
    }

    public StopRule {
        Require.atLeast("moreTrials", moreTrials, verdict == Advice.ENOUGH ? 0 : 1);
        Require.atLeast("trialsInAll", trialsInAll, 1);
        halfWidthPercent.ifPresent(value -> Require.positive("halfWidthPercent", value));
        Require.positive("wantedPercent", wantedPercent);
    }

    /**
     * Says whether some trials are enough.
     *
     * @param factors the factors of the trials that count, in % air
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     * @param profile whose half-width, least number of trials and rounding hold
     * @param elsewhere how trials scatter elsewhere in the laboratory, on this type of meter
     * @return what to do; empty when no trial counts
     */
    public static Optional<StopRule> of(
            double[] factors, MeterType type, double divisionPercent, Profile profile, ScatterElsewhere elsewhere) {
        if (factors.length == 0) {
            return Optional.empty();
        }
        Summary trials = Summary.of(factors);
        return Optional.of(of(trials, Scatter.of(trials, type, divisionPercent, elsewhere), profile));
    }

    /**
     * Says whether some trials are enough.
     *
     * @param trials the trials that count
     * @param scatter the scatter to reckon with
     * @param profile whose half-width, least number of trials and rounding hold
     */
    static StopRule of(Summary trials, Optional<Scatter> scatter, Profile profile) {
        int count = trials.count();
        int least = profile.count(FigureName.LEAST_TRIALS);
        double wanted = profile.number(FigureName.HALF_WIDTH);
        if (scatter.isEmpty()) {
            int more = Math.max(1, least - count);
            return new StopRule(
                    Advice.NOT_YET_KNOWN,
                    more,
                    count + more,
                    false,
                    OptionalDouble.empty(),
                    wanted,
                    scatter,
                    Optional.empty(),
                    Optional.empty());
        }
        Scatter known = scatter.get();
        int most = Math.max(count, MOST_TRIALS);
        int narrow = trialsFor(known, wanted, most);
        int inAll = Math.max(count, Math.max(narrow, least));
        boolean reachable = narrow <= most;
        int more = inAll - count;
        Advice verdict = !reachable ? Advice.OUT_OF_REACH : more == 0 ? Advice.ENOUGH : Advice.MORE;
        return new StopRule(
                verdict,
                more,
                inAll,
                verdict == Advice.MORE && narrow <= count,
                OptionalDouble.of(known.halfWidthPercent(count)),
                wanted,
                scatter,
                reachable && !known.isOfTheDial() ? Optional.of(risks(known, wanted, inAll, least)) : Optional.empty(),
                Optional.of(NextTrial.of(trials, known, profile.factorRounding())));
    }

    /** Returns how many trials make the interval narrow enough; one more than the most when that many do not. */
    private static int trialsFor(Scatter scatter, double wanted, int most) {
        int n = scatter.fewestTrials();
        while (n <= most && scatter.halfWidthPercent(n) > Slack.over(wanted)) {
            n++;
        }
        return n;
    }

    private static Risks risks(Scatter scatter, double wanted, int inAll, int least) {
        double degrees = scatter.degreesOfFreedom();
        double s = scatter.standardDeviationPercent();
        double z = new StudentT(Double.POSITIVE_INFINITY).coverageFactor(Scatter.CONFIDENCE);
        // With a known scatter n trials are enough when sigma is at most wanted sqrt(n) / z.
        double squares = degrees * (s * z / wanted) * (s * z / wanted);
        ChiSquare chiSquare = new ChiSquare(degrees);
        OptionalDouble oneLess = inAll - 1 >= Math.max(1, least)
                ? OptionalDouble.of(chiSquare.upperTail(squares / (inAll - 1)))
                : OptionalDouble.empty();
        return new Risks(STATED_CONFIDENCE, chiSquare.lowerTail(squares / inAll), oneLess);
    }
}
