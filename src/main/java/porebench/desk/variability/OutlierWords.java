package porebench.desk.variability;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.desk.form.Texts;
import porebench.record.JudgedTrial;
import porebench.statistics.GrubbsTest;
import porebench.statistics.Summary;

/**
 * Says whether one trial lies too far from the others, or why no test can tell.
 *
 * <p>It asks {@link GrubbsTest#isOutlier} and nothing else; it never leaves a trial out.
 */
final class OutlierWords {
    /** The false alarms that are accepted: one in twenty. Common practice, no source. */
    static final double SIGNIFICANCE = 0.05;

    /** Far below any reading, in % air. */
    private static final double NOISE = 1e-9;

    private static final int FEWEST = 4;
    private static final int DECIMALS = 2;

    private final Numbers numbers;
    private final Texts texts;

    OutlierWords(Numbers numbers, Texts texts) {
        this.numbers = numbers;
        this.texts = texts;
    }

    /**
     * Says it in one sentence.
     *
     * @param counting the trials that count, in the order made
     * @param divisionPercent a division of the meter's scale, in % air
     */
    String of(List<JudgedTrial> counting, double divisionPercent) {
        double[] factors = counting.stream()
                .mapToDouble(trial -> trial.factorPercent().orElseThrow())
                .toArray();
        if (factors.length < FEWEST) {
            return texts.get("outlier.too-few", Integer.toString(factors.length), Integer.toString(FEWEST));
        }
        Optional<GrubbsTest> test = GrubbsTest.of(factors);
        if (test.isEmpty()) {
            return texts.get("outlier.all-equal");
        }
        GrubbsTest grubbs = test.get();
        String id = counting.get(grubbs.index()).trial().value().id().text();
        String distance = numbers.show(grubbs.distance(), DECIMALS);
        if (grubbs.isOutlier(SIGNIFICANCE, divisionPercent)) {
            return texts.get("outlier.yes", id, distance, numbers.show(grubbs.statistic(), DECIMALS));
        }
        if (asFar(factors, grubbs.distance()) > 1) {
            return texts.get("outlier.tied", Long.toString(asFar(factors, grubbs.distance())), distance);
        }
        if (!isAbove(grubbs.distance(), divisionPercent)) {
            return texts.get("outlier.one-division", id, distance, numbers.show(divisionPercent, DECIMALS));
        }
        return texts.get("outlier.no", id, distance, numbers.show(grubbs.statistic(), DECIMALS));
    }

    private static long asFar(double[] factors, double distance) {
        double mean = Summary.of(factors).mean();
        return Arrays.stream(factors)
                .filter(factor -> !isAbove(distance, Math.abs(factor - mean)))
                .count();
    }

    /** Compares without the noise of binary fractions, in which 0.5 - 0.4 is less than 0.1. */
    private static boolean isAbove(double value, double limit) {
        return value - limit > NOISE;
    }
}
