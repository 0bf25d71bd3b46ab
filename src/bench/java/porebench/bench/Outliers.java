package porebench.bench;

import java.util.stream.IntStream;
import porebench.statistics.outlier.RepeatSets;

/** Prints how many of the drawn sets have an outlier, which other programs that do the same work must find as well. */
final class Outliers {
    private Outliers() {}

    public static void main(String[] args) {
        RepeatSets sets = RepeatSets.of(Draws.values(), Draws.ends(), new RepeatSets.Judging(0.1, 0.1, 0.05));
        long outliers = IntStream.range(0, sets.size()).filter(sets::hasOutlier).count();
        long wide = IntStream.range(0, sets.size())
                .filter(set -> !sets.isWithinCriticalRange(set))
                .count();
        System.out.println(outliers + " " + wide);
    }
}
