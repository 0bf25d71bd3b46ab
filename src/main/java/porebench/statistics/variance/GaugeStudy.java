package porebench.statistics.variance;

import java.util.Optional;
import java.util.OptionalDouble;
import porebench.quantity.Require;
import porebench.statistics.Judged;
import porebench.statistics.variance.MeanSquareIntervals.Weighted;

/**
 * A crossed gauge study: how much of the spread of readings comes from the samples, and how much from reading them.
 *
 * <p>Every operator reads every sample as often. Operators, samples and what an operator does with one sample in
 * particular (the interaction) are taken as drawn at random. With interaction the components are vE = MS_E, vI = (MS_I -
 * MS_E) / r, vO = (MS_O - MS_I) / (p r) and vS = (MS_S - MS_I) / (o r), for o operators, p samples and r repeats; without
 * it, interaction and repeats are pooled into one mean square that takes the place of both. Whether to pool is the
 * person's choice; {@link #suggestsInteraction} tells what the data suggest. A component that comes out below 0 counts as
 * 0, and its raw value is kept; the gauge is repeatability, operator and interaction together, after that.
 *
 * <p>Intervals: chi-square for a single mean square, modified large-sample for the others ({@link MeanSquareIntervals}),
 * a generalised interval by simulation for shares ({@link GaugeShares}). Those of sums are about the sum of the raw
 * components.
 *
 * <p>Source: AIAG, Measurement Systems Analysis, 4th edition (2010), chapter III, analysis of variance; D. C. Montgomery,
 * Introduction to Statistical Quality Control, chapter 8; the pooling level 0.25 and the shares of 10 % and 30 % also from there; recalled. Differences from
 * the source: none.
 */
public final class GaugeStudy {
    /**
     * An interaction less probable than this by chance is usually worth keeping; the laboratory may choose another level.
     *
     * <p>Source: the two textbooks above, recalled. It is a convention: the larger it is, the seldomer a real interaction is pooled.
     */
    public static final double POOLING_LEVEL = 0.25;

    /** Below this share of study variation, in %, a gauge is usually called fit. */
    public static final double SMALL_SHARE_PERCENT = 10;

    /** Up to this share of study variation, in %, a gauge may do, depending on what it is for. */
    public static final double LARGEST_SHARE_PERCENT = 30;

    /** How many samples a gauge with a share tells apart: the ratio of standard deviations times this, sqrt 2. */
    private static final double CATEGORY_FACTOR = 1.41;

    private static final int ERROR_IN_GAUGE = 1;

    private final CrossedAnova anova;
    private final boolean isWithInteraction;
    private final MeanSquare error;
    private final VarianceEstimate repeatability;
    private final VarianceEstimate operator;
    private final Optional<VarianceEstimate> interaction;
    private final VarianceEstimate sample;
    private final VarianceInterval gaugeInterval;
    private final Optional<VarianceInterval> gaugeShareInterval;

    private GaugeStudy(CrossedAnova anova, boolean isWithInteraction, double confidence, long seed) {
        this.anova = anova;
        this.isWithInteraction = isWithInteraction;
        MeanSquareIntervals intervals = new MeanSquareIntervals(confidence);
        double repeats = anova.repeats();
        double ofOperator = 1 / (anova.samples() * repeats);
        double ofSample = 1 / (anova.operators() * repeats);
        error = isWithInteraction ? anova.interaction() : anova.interaction().with(anova.repeatability());
        MeanSquare single = isWithInteraction ? anova.repeatability() : error;
        repeatability = new VarianceEstimate(single.meanSquare().orElseThrow(), intervals.sum(new Weighted(1, single)));
        operator = difference(intervals, ofOperator, anova.operator(), error);
        sample = difference(intervals, ofSample, anova.sample(), error);
        interaction =
                isWithInteraction ? Optional.of(difference(intervals, 1 / repeats, error, single)) : Optional.empty();
        Weighted[] gauge = isWithInteraction
                ? new Weighted[] {
                    new Weighted(ofOperator, anova.operator()),
                    new Weighted((anova.samples() - 1) * ofOperator, error),
                    new Weighted(1 - 1 / repeats, single)
                }
                : new Weighted[] {new Weighted(ofOperator, anova.operator()), new Weighted(1 - ofOperator, error)};
        gaugeInterval = intervals.sum(gauge);
        gaugeShareInterval =
                GaugeShares.interval(gauge, new Weighted(ofSample, anova.sample()), ERROR_IN_GAUGE, confidence, seed);
    }

    /**
     * Analyses readings.
     *
     * @param readings by operator, sample and repeat; at least two of each, as many in every cell, each finite
     * @param isWithInteraction whether interaction is kept apart, rather than pooled with the repeats
     * @param confidence of the intervals, greater than 0 and less than 1
     * @param seed of the simulation that gives the interval of shares
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static GaugeStudy of(double[][][] readings, boolean isWithInteraction, double confidence, long seed) {
        return new GaugeStudy(CrossedAnova.of(readings), isWithInteraction, confidence, seed);
    }

    private static VarianceEstimate difference(
            MeanSquareIntervals intervals, double weight, MeanSquare more, MeanSquare less) {
        Weighted one = new Weighted(weight, more);
        Weighted other = new Weighted(weight, less);
        return new VarianceEstimate(one.value() - other.value(), intervals.difference(one, other));
    }

    public boolean isWithInteraction() {
        return isWithInteraction;
    }

    public int operators() {
        return anova.operators();
    }

    public int samples() {
        return anova.samples();
    }

    public int repeats() {
        return anova.repeats();
    }

    public MeanSquare operatorSquares() {
        return anova.operator();
    }

    public MeanSquare sampleSquares() {
        return anova.sample();
    }

    /** Returns the interaction's line; empty where it is pooled with the repeats. */
    public Optional<MeanSquare> interactionSquares() {
        return isWithInteraction ? Optional.of(anova.interaction()) : Optional.empty();
    }

    /** Returns the line of the repeats, with the interaction in it where that is pooled. */
    public MeanSquare repeatabilitySquares() {
        return isWithInteraction ? anova.repeatability() : error;
    }

    public MeanSquare totalSquares() {
        return anova.total();
    }

    /** Tests whether operators differ. */
    public Judged<FTest> operatorTest() {
        return FTest.of(anova.operator(), error);
    }

    /** Tests whether samples differ. */
    public Judged<FTest> sampleTest() {
        return FTest.of(anova.sample(), error);
    }

    /** Tests whether operators read some samples otherwise than they read the others, pooled or not. */
    public Judged<FTest> interactionTest() {
        return FTest.of(anova.interaction(), anova.repeatability());
    }

    /**
     * Returns whether the data suggest keeping the interaction apart: it is less probable by chance than a level.
     *
     * @param level from which on it may be pooled, greater than 0 and less than 1; {@link #POOLING_LEVEL} is usual
     * @throws IllegalArgumentException if the level is outside these bounds
     */
    public boolean suggestsInteraction(double level) {
        Require.positive("level", level);
        Require.positive("1 - level", 1 - level);
        return interactionTest()
                .meaningful()
                .map(test -> test.p() < level)
                .orElse(anova.interaction().sumOfSquares() > 0);
    }

    /** Returns the variance of one operator's repeat readings of one sample. */
    public VarianceEstimate repeatability() {
        return repeatability;
    }

    /** Returns the variance of operators about each other. */
    public VarianceEstimate operator() {
        return operator;
    }

    /** Returns the variance of what operators do with a sample in particular; empty where it is pooled. */
    public Optional<VarianceEstimate> interaction() {
        return interaction;
    }

    /** Returns the variance of the samples themselves. */
    public VarianceEstimate sample() {
        return sample;
    }

    /** Returns the variance of reading: repeatability, operator and interaction. */
    public double gauge() {
        return repeatability.variance()
                + operator.variance()
                + interaction.map(VarianceEstimate::variance).orElse(0.0);
    }

    public VarianceInterval gaugeInterval() {
        return gaugeInterval;
    }

    /** Returns the variance of a reading of a sample drawn at random. */
    public double total() {
        return gauge() + sample.variance();
    }

    /** Returns what share of the total variance some variance is; empty where nothing varies. */
    public OptionalDouble share(double variance) {
        return total() == 0 ? OptionalDouble.empty() : OptionalDouble.of(variance / total());
    }

    /** Returns the interval of the gauge's share of the total variance; empty where nothing varies. */
    public Optional<VarianceInterval> gaugeShareInterval() {
        return gaugeShareInterval;
    }

    /** Returns the gauge's standard deviation over the total one, the share of study variation, from 0 to 1. */
    public OptionalDouble gaugeShareOfVariation() {
        OptionalDouble share = share(gauge());
        return share.isPresent() ? OptionalDouble.of(Math.sqrt(share.getAsDouble())) : share;
    }

    /**
     * Returns how many kinds of samples the gauge tells apart, before it is cut to a whole number: 1.41 times the
     * standard deviation of samples over that of the gauge.
     *
     * @return empty where the gauge shows no spread, so that nothing limits it but its division
     */
    public OptionalDouble categories() {
        return gauge() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(CATEGORY_FACTOR * Math.sqrt(sample.variance() / gauge()));
    }

    /** Returns the number of distinct categories, a whole number; empty where the gauge shows no spread. */
    public Optional<Integer> distinctCategories() {
        OptionalDouble categories = categories();
        return categories.isPresent()
                ? Optional.of((int) Math.min(Integer.MAX_VALUE, Math.floor(categories.getAsDouble())))
                : Optional.empty();
    }
}
