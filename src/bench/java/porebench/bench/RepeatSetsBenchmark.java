package porebench.bench;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import porebench.statistics.outlier.GrubbsTest;
import porebench.statistics.outlier.RepeatSets;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.MeanInterval;
import porebench.statistics.summary.Summary;

/**
 * What it costs to sum up 100,000 determinations of 10 trials with interval, range check and Grubbs: over columns, and by
 * the classes that look at one determination.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class RepeatSetsBenchmark {
    private static final RepeatSets.Judging JUDGING = new RepeatSets.Judging(0.1, 0.1, 0.05);

    private double[] values = {};
    private int[] ends = {};

    @Setup
    public void draw() {
        values = Draws.values();
        ends = Draws.ends();
    }

    @Benchmark
    public RepeatSets columns() {
        return RepeatSets.of(values, ends, JUDGING);
    }

    @Benchmark
    public int oneByOne() {
        int outliers = 0;
        for (int end : ends) {
            double[] set = Arrays.copyOfRange(values, end - Draws.TRIALS, end);
            Summary summary = Summary.of(set);
            Optional<MeanInterval> interval = MeanInterval.of(summary, 0.95);
            boolean within = CriticalRange.check(summary.range(), summary.count(), JUDGING.repeatability())
                    .passes();
            boolean outlier = GrubbsTest.of(set)
                    .filter(test -> test.isOutlier(JUDGING.significance(), JUDGING.division()))
                    .isPresent();
            outliers += (outlier ? 1 : 0) + (within && interval.isEmpty() ? 1 : 0);
        }
        return outliers;
    }
}
