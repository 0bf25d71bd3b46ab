package porebench.statistics.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.Judged;
import porebench.statistics.outlier.CochranTest;
import porebench.statistics.outlier.GrubbsPairTest;
import porebench.statistics.outlier.GrubbsTest;
import porebench.statistics.summary.Summary;
import porebench.statistics.variance.MeanSquare;
import porebench.statistics.variance.MeanSquareIntervals;
import porebench.statistics.variance.VarianceInterval;

/**
 * One level of an interlaboratory comparison: how far results agree within and between laboratories.
 *
 * <p>With n results of mean m and standard deviation s in each of p laboratories: s_r is the pooled s; s_d^2 is the sum of n
 * (m - mean)^2 over p - 1; the variance between laboratories s_L^2 is (s_d^2 - s_r^2) over the effective n, and counts as 0
 * where it comes out negative; s_R^2 = s_r^2 + s_L^2. Two results of one laboratory differ by more than r = 2.8 s_r, two of
 * different laboratories by more than R = 2.8 s_R, in one case of twenty.
 *
 * <p>Nothing is left out: outliers are named, and the one who compares decides with the laboratory in question.
 *
 * <p>Source: ISO 5725-2:1994, 7.3 and 7.4; ISO 5725-6 for r and R; recalled. Differences from the source: nothing is rounded on
 * the way; when every laboratory gave one result, s_R is the standard deviation of the results.
 *
 * @param cells the results of each laboratory, at least one laboratory
 * @param mean the mean of all results, in their unit
 * @param repeatability s_r, in the unit of the results
 * @param reproducibility s_R, in the unit of the results
 * @param betweenVariance s_L^2 as it comes out, also below 0, in the squared unit of the results
 * @param h Mandel's h of each laboratory in the order of the cells
 * @param k Mandel's k of each laboratory in the order of the cells; none of one with a single result
 * @param cochran the test of the largest standard deviation
 * @param grubbs the test of the mean farthest out
 * @param grubbsTwo the test of the two lowest or highest means
 */
public record LaboratoryComparison(
        List<Cell> cells,
        double mean,
        Judged<Double> repeatability,
        Judged<Double> reproducibility,
        Judged<Double> betweenVariance,
        Judged<List<Mandel>> h,
        Judged<List<Optional<Mandel>>> k,
        Judged<CochranTest> cochran,
        Judged<GrubbsTest> grubbs,
        Judged<GrubbsPairTest> grubbsTwo) {
    /** What turns a standard deviation into the difference of two results that is exceeded once in twenty times. */
    public static final double LIMIT_FACTOR = 2.8;

    /** With fewer laboratories h is the same whatever they find. */
    static final int FEWEST_FOR_H = 3;

    /**
     * The results of one laboratory.
     *
     * @param laboratory its name
     * @param results what its results amount to
     */
    public record Cell(String laboratory, Summary results) {
        public Cell {
            Require.notBlank("laboratory", laboratory);
        }

        /** Returns the results of a laboratory, at least one. */
        public static Cell of(String laboratory, double... results) {
            return new Cell(laboratory, Summary.of(results));
        }
    }

    public LaboratoryComparison {
        cells = List.copyOf(cells);
        Require.atLeast("count of cells", cells.size(), 1);
        Require.finite("mean", mean);
    }

    /** What the sums over the cells are made of. */
    private record Sums(
            int laboratories, int results, double squaredCounts, double mean, double within, double between) {
        static Sums of(List<Summary> cells) {
            int results = cells.stream().mapToInt(Summary::count).sum();
            // Means lie close together beside their size: the first is taken out before they are weighed.
            double origin = cells.get(0).mean();
            double offset = cells.stream()
                            .mapToDouble(cell -> cell.count() * (cell.mean() - origin))
                            .sum()
                    / results;
            double within = cells.stream()
                    .mapToDouble(cell -> (cell.count() - 1) * CochranTest.variance(cell))
                    .sum();
            double between = cells.stream()
                    .mapToDouble(cell -> cell.count() * Math.pow(cell.mean() - origin - offset, 2))
                    .sum();
            double squaredCounts = cells.stream()
                    .mapToDouble(cell -> (double) cell.count() * cell.count())
                    .sum();
            return new Sums(cells.size(), results, squaredCounts, origin + offset, within, between);
        }

        int degreesWithin() {
            return results - laboratories;
        }

        double effectiveCount() {
            return (results - squaredCounts / results) / (laboratories - 1);
        }

        /** Returns s_d^2. */
        double meanSquareBetween() {
            return between / (laboratories - 1);
        }
    }

    /**
     * Compares laboratories whose results were read on a divided scale.
     *
     * @param division the smallest step of the scale, in the unit of the results; 0 for none
     * @param cells the results of each laboratory, at least one laboratory
     * @throws IllegalArgumentException if there is no laboratory or the division is negative
     */
    public static LaboratoryComparison of(double division, List<Cell> cells) {
        Require.atLeast("count of cells", cells.size(), 1);
        Require.atLeastZero("division", division);
        List<Summary> summaries = cells.stream().map(Cell::results).toList();
        Sums sums = Sums.of(summaries);
        double[] means = summaries.stream().mapToDouble(Summary::mean).toArray();
        Judged<Double> within = within(sums);
        Judged<Double> between = between(sums);
        return new LaboratoryComparison(
                cells,
                sums.mean(),
                within.map(Math::sqrt),
                total(sums, within, between),
                between,
                h(division, Summary.of(means), means),
                k(division, summaries),
                CochranTest.judge(division, summaries),
                GrubbsTest.judge(division, means),
                GrubbsPairTest.judge(division, means));
    }

    private static Judged<Double> within(Sums sums) {
        if (sums.degreesWithin() == 0) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        return sums.within() == 0
                ? Judged.withheld(Judged.Reason.NO_SPREAD)
                : new Judged.Meaningful<>(sums.within() / sums.degreesWithin());
    }

    private static Judged<Double> between(Sums sums) {
        if (sums.laboratories() < 2 || sums.degreesWithin() == 0) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        double within = sums.within() / sums.degreesWithin();
        double more = sums.meanSquareBetween() - within;
        // What is left of two equal numbers in binary is no negative variance.
        boolean isNone = Slack.isSame(sums.meanSquareBetween(), within);
        return new Judged.Meaningful<>(isNone ? 0.0 : more / sums.effectiveCount());
    }

    private static Judged<Double> total(Sums sums, Judged<Double> within, Judged<Double> between) {
        if (sums.laboratories() < 2) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        double variance = sums.degreesWithin() == 0
                ? sums.meanSquareBetween()
                : within.meaningful().orElse(0.0)
                        + Math.max(0, between.meaningful().orElseThrow());
        return variance == 0 ? Judged.withheld(Judged.Reason.NO_SPREAD) : new Judged.Meaningful<>(Math.sqrt(variance));
    }

    private static Judged<List<Mandel>> h(double division, Summary all, double[] means) {
        if (means.length < FEWEST_FOR_H) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        if (all.range() == 0) {
            return Judged.withheld(Judged.Reason.NO_SPREAD);
        }
        if (all.range() <= Slack.over(division)) {
            return Judged.withheld(Judged.Reason.WITHIN_ONE_DIVISION);
        }
        double s = all.standardDeviation().orElseThrow();
        List<Mandel> h = new ArrayList<>();
        for (double mean : means) {
            h.add(Mandel.h((mean - all.mean()) / s, means.length));
        }
        return new Judged.Meaningful<>(List.copyOf(h));
    }

    private static Judged<List<Optional<Mandel>>> k(double division, List<Summary> cells) {
        List<Summary> repeated = cells.stream().filter(cell -> cell.count() > 1).toList();
        if (repeated.size() < 2) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        if (CochranTest.sumOfVariances(repeated) == 0) {
            return Judged.withheld(Judged.Reason.NO_SPREAD);
        }
        if (CochranTest.isTooCoarse(division, repeated)) {
            return Judged.withheld(Judged.Reason.SCALE_TOO_COARSE);
        }
        int p = repeated.size();
        return new Judged.Meaningful<>(cells.stream()
                .map(cell -> cell.count() < 2
                        ? Optional.<Mandel>empty()
                        : Optional.of(
                                Mandel.k(Math.sqrt(p * CochranTest.share(division, cell, repeated)), p, cell.count())))
                .toList());
    }

    /** Returns the squares of the results about the means of their laboratories. */
    MeanSquare within() {
        Sums sums = sums();
        return new MeanSquare(sums.degreesWithin(), sums.within());
    }

    private Sums sums() {
        return Sums.of(cells.stream().map(Cell::results).toList());
    }

    /**
     * Returns where s_r lies, in the unit of the results.
     *
     * @param confidence greater than 0 and less than 1
     */
    public Optional<VarianceInterval> repeatabilityInterval(double confidence) {
        return repeatability
                .meaningful()
                .map(known -> new MeanSquareIntervals(confidence)
                        .sum(new MeanSquareIntervals.Weighted(1, within()))
                        .ofRoots());
    }

    /**
     * Returns where s_R lies, in the unit of the results: s_R^2 is the mean square between laboratories over n, and what is
     * left of one of that within. With uneven numbers of results it is an approximation.
     *
     * @param confidence greater than 0 and less than 1
     */
    public Optional<VarianceInterval> reproducibilityInterval(double confidence) {
        Sums sums = sums();
        if (reproducibility.meaningful().isEmpty()) {
            return Optional.empty();
        }
        MeanSquareIntervals intervals = new MeanSquareIntervals(confidence);
        double count = sums.effectiveCount();
        MeanSquare between = new MeanSquare(sums.laboratories() - 1, sums.between());
        MeanSquareIntervals.Weighted ofBetween = new MeanSquareIntervals.Weighted(1 / count, between);
        VarianceInterval variance = sums.degreesWithin() == 0
                ? intervals.sum(ofBetween)
                : intervals.sum(ofBetween, new MeanSquareIntervals.Weighted(1 - 1 / count, within()));
        return Optional.of(variance.ofRoots());
    }

    /** Returns how many results there are. */
    public int count() {
        return cells.stream().mapToInt(cell -> cell.results().count()).sum();
    }

    /** Returns r, 2.8 s_r, in the unit of the results. */
    public Judged<Double> repeatabilityLimit() {
        return repeatability.map(s -> LIMIT_FACTOR * s);
    }

    /** Returns R, 2.8 s_R, in the unit of the results. */
    public Judged<Double> reproducibilityLimit() {
        return reproducibility.map(s -> LIMIT_FACTOR * s);
    }

    /** Returns whether the laboratories differ less than their own scatter lets expect, so that s_L counts as 0. */
    public boolean isBetweenNegative() {
        return betweenVariance.meaningful().filter(variance -> variance < 0).isPresent();
    }
}
