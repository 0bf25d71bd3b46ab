package porebench.chart.study;

import java.util.List;
import java.util.Optional;
import porebench.quantity.Symbolic;
import porebench.statistics.comparison.Mandel;

/**
 * Mandel's h or k of laboratories that tested the same materials.
 *
 * @param statistic which of the two
 * @param laboratories the laboratories, in the order of the study
 * @param levels the levels, in the order of the study
 * @param values one for each level and laboratory that tested it, level by level
 * @param isSimulated whether nothing of it was measured, as in a book for training
 */
public record MandelPlot(
        Statistic statistic, List<String> laboratories, List<String> levels, List<Value> values, boolean isSimulated) {
    public MandelPlot {
        laboratories = List.copyOf(laboratories);
        levels = List.copyOf(levels);
        values = List.copyOf(values);
    }

    /** Which statistic is plotted. */
    public enum Statistic implements Symbolic {
        /** Between laboratories: of either sign. */
        H,
        /** Within laboratories: never below 0. */
        K;
    }

    /**
     * What one laboratory has at one level.
     *
     * @param laboratory the place of the laboratory among them, from 0
     * @param level the place of the level among them, from 0
     * @param results how many results it gave
     * @param found the statistic with its critical values; empty where it would mean nothing
     * @param whyNot a sentence why there is none; blank where there is one
     */
    public record Value(int laboratory, int level, int results, Optional<Mandel> found, String whyNot) {}

    /** Returns whether a level has the statistic of any laboratory. */
    boolean isJudged(int level) {
        return !judged(level).isEmpty();
    }

    /**
     * Returns whether k of a level says next to nothing: of two laboratories with two results each it is above its 5 % value
     * only where one spread is more than tan(0.95 pi / 2), or 12.7, times the other.
     */
    boolean isTwoOfTwo(int level) {
        List<Value> judged = judged(level);
        return statistic == Statistic.K
                && judged.size() == 2
                && judged.stream().allMatch(value -> value.results() == 2);
    }

    private List<Value> judged(int level) {
        return values.stream()
                .filter(value -> value.level() == level && value.found().isPresent())
                .toList();
    }
}
