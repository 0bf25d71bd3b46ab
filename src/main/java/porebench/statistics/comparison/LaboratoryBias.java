package porebench.statistics.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.statistics.Judged;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.Summary;
import porebench.statistics.variance.MeanSquare;

/**
 * How far one laboratory lies from the others, with what that is uncertain by.
 *
 * <p>The laboratory's mean, over the levels that all these laboratories tested, is compared with the mean of the other
 * laboratories' means. Its variance is that of the laboratory's own results, s_r^2 / n of each level over the number of levels
 * squared, and that of the mean of the others, their variance over how many they are. Degrees of freedom follow Welch and
 * Satterthwaite. On a divided scale the rounding of a mean, division^2 / 12, is not taken to fall with the number of results.
 *
 * <p>Source: ISO 5725-4:1994, clause 4, for bias as a difference of means; that a laboratory is compared with all others and
 * not with a reference value is common practice, no source; the degrees of freedom JCGM 100:2008, G.4.1; recalled.
 *
 * @param laboratory its name
 * @param levels over how many levels, at least 1
 * @param bias its mean less that of the others, in the unit of the results
 * @param standardUncertainty of the bias, in that unit, at least 0
 * @param degreesOfFreedom of the standard uncertainty
 * @param expanded U, the half-width of the 95 % interval, in the unit of the results: the two parts of the uncertainty, each times
 *     its own t; with the degrees of freedom of both together four laboratories covered 93 in a hundred
 */
public record LaboratoryBias(
        String laboratory,
        int levels,
        double bias,
        double standardUncertainty,
        double degreesOfFreedom,
        double expanded) {
    /** The mean of two others has a variance with one degree of freedom; of one other it has none. */
    public static final int FEWEST = 3;

    private static final double CONFIDENCE = 0.95;

    public LaboratoryBias {
        Require.notBlank("laboratory", laboratory);
        Require.atLeast("levels", levels, 1);
        Require.finite("bias", bias);
        Require.atLeastZero("standardUncertainty", standardUncertainty);
    }

    /** One laboratory's mean over the levels, and what its own results make uncertain about it. */
    private record Mean(String laboratory, double value, double variance, double squaredOverDegrees) {
        double degrees() {
            return squaredOverDegrees == 0 ? Double.POSITIVE_INFINITY : variance * variance / squaredOverDegrees;
        }
    }

    /**
     * Compares each laboratory with the others.
     *
     * @param levels at least one
     * @param division of the scale, in the unit of the results; 0 for none
     * @return one for each laboratory that tested at every level; withheld as too few where fewer than three did, or where no
     *     laboratory repeated a test at some level, and as without spread where all repeats of a level are equal and the scale
     *     has no division
     */
    public static Judged<List<LaboratoryBias>> of(List<LaboratoryComparison> levels, double division) {
        Require.atLeast("count of levels", levels.size(), 1);
        Require.atLeastZero("division", division);
        List<Mean> means = new ArrayList<>();
        for (LaboratoryComparison.Cell cell : levels.get(0).cells()) {
            List<Summary> cells = levels.stream()
                    .flatMap(level -> find(level, cell.laboratory()).stream())
                    .toList();
            if (cells.size() == levels.size()) {
                Optional<Mean> mean = mean(cell.laboratory(), levels, cells, division);
                if (mean.isEmpty()) {
                    return Judged.withheld(Judged.Reason.TOO_FEW);
                }
                means.add(mean.get());
            }
        }
        if (means.size() < FEWEST) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        List<LaboratoryBias> biases =
                means.stream().map(mean -> against(mean, means, levels.size())).toList();
        return biases.stream().anyMatch(bias -> bias.standardUncertainty == 0)
                ? Judged.withheld(Judged.Reason.NO_SPREAD)
                : new Judged.Meaningful<>(biases);
    }

    private static Optional<Summary> find(LaboratoryComparison level, String laboratory) {
        return level.cells().stream()
                .filter(cell -> cell.laboratory().equals(laboratory))
                .map(LaboratoryComparison.Cell::results)
                .findFirst();
    }

    /** Returns the mean over the levels; empty where a level has no repeats to tell the scatter from. */
    private static Optional<Mean> mean(
            String laboratory, List<LaboratoryComparison> levels, List<Summary> cells, double division) {
        int count = levels.size();
        double sum = 0;
        double variance = 0;
        double weighted = 0;
        for (int i = 0; i < count; i++) {
            MeanSquare within = levels.get(i).within();
            if (within.degreesOfFreedom() == 0) {
                return Optional.empty();
            }
            double own = within.meanSquare().orElseThrow() / cells.get(i).count() / count / count;
            sum += cells.get(i).mean() / count;
            variance += own + division * division / 12 / count / count;
            weighted += own * own / within.degreesOfFreedom();
        }
        return Optional.of(new Mean(laboratory, sum, variance, weighted));
    }

    private static LaboratoryBias against(Mean mean, List<Mean> means, int levels) {
        Summary others = Summary.of(means.stream()
                .filter(other -> other != mean)
                .mapToDouble(Mean::value)
                .toArray());
        int degrees = others.count() - 1;
        double ofOthers = Math.pow(others.standardDeviation().orElseThrow(), 2) / others.count();
        double variance = mean.variance() + ofOthers;
        double weighted = mean.squaredOverDegrees() + ofOthers * ofOthers / degrees;
        double effective = weighted == 0 ? Double.POSITIVE_INFINITY : variance * variance / weighted;
        return new LaboratoryBias(
                mean.laboratory(),
                levels,
                mean.value() - others.mean(),
                Math.sqrt(variance),
                Math.max(1, effective),
                Math.hypot(expanded(mean.variance(), mean.degrees()), expanded(ofOthers, degrees)));
    }

    private static double expanded(double variance, double degrees) {
        return Math.sqrt(variance) * new StudentT(degrees).coverageFactor(CONFIDENCE);
    }

    /** Returns whether the bias is larger than its uncertainty. */
    public boolean isSeen() {
        return Math.abs(bias) > expanded();
    }
}
