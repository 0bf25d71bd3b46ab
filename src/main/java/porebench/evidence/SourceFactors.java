package porebench.evidence;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import porebench.method.trial.Scatter;
import porebench.record.id.SourceId;
import porebench.statistics.summary.Summary;
import porebench.statistics.summary.ToleranceInterval;

/**
 * The factors that mixes with one source have, and the range in which most of its determinations lie.
 *
 * <p>Of each mix its newest determination with the source as it is now counts, whatever the meter. The range is a tolerance
 * interval, {@link ToleranceInterval}; that such factors scatter about one value as normal values do is taken for granted.
 *
 * @param seen the means of the determinations, one a mix
 * @param range which holds {@link #CONTENT} of all determinations with {@link #CONFIDENCE}; empty where fewer than
 *     {@link #FEWEST} mixes tell
 */
public record SourceFactors(Summary seen, Optional<ToleranceInterval> range) {
    /** How many mixes it takes. With four the range would be over five standard deviations wide to either side. */
    public static final int FEWEST = 5;

    /** The share of all determinations with the source that the range holds. */
    public static final double CONTENT = 0.9;

    /** In how many of 100 cases it does. */
    public static final double CONFIDENCE = 0.95;

    /**
     * Gathers the factors of a source.
     *
     * @param mixes everything known about every mix
     * @param source the source
     * @return empty when no mix has a determination with the source as it is now
     */
    public static Optional<SourceFactors> of(Collection<Evidence> mixes, SourceId source) {
        Gathering gathering = new Gathering(source);
        mixes.stream()
                .filter(one -> one.mix().value().sources().contains(source))
                .forEach(gathering::add);
        return gathering.factors();
    }

    /** Gathers the factors of a source mix by mix, so that none of them need be held. */
    public static final class Gathering {
        private final SourceId source;
        private final List<Double> means = new ArrayList<>();
        private double dialPercent;

        public Gathering(SourceId source) {
            this.source = source;
        }

        /** Adds a mix that uses the source. */
        public void add(Evidence mix) {
            Optional<JudgedDetermination> newest = newest(mix, source);
            newest.flatMap(JudgedDetermination::summary)
                    .ifPresent(known -> means.add(known.summary().mean()));
            newest.ifPresent(judged -> dialPercent =
                    Math.max(dialPercent, Scatter.ofTheDial(judged.meterType(), mix.divisionPercent(judged))));
        }

        /** Returns what was gathered; empty when no mix has a determination with the source as it is now. */
        public Optional<SourceFactors> factors() {
            return means.isEmpty()
                    ? Optional.empty()
                    : Optional.of(of(means.stream().mapToDouble(mean -> mean).toArray(), dialPercent));
        }
    }

    /**
     * Returns the range of some means.
     *
     * @param means of determinations, one a mix, in % air, at least one
     * @param dialPercent the standard deviation that reading the coarsest scale makes, in % air, greater than 0
     */
    public static SourceFactors of(double[] means, double dialPercent) {
        Summary seen = Summary.of(means);
        return new SourceFactors(
                seen,
                seen.count() < FEWEST
                        ? Optional.empty()
                        : Optional.of(ToleranceInterval.of(seen, dialPercent, CONTENT, CONFIDENCE)));
    }

    private static Optional<JudgedDetermination> newest(Evidence evidence, SourceId source) {
        return evidence.determinations().stream()
                .filter(judged -> judged.counted() > 0)
                .filter(judged -> evidence.isOfLastStone(judged, source))
                .reduce((earlier, later) -> later);
    }
}
