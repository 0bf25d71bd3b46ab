package porebench.promise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.summary.Summary;

/**
 * What charts say of false alarms, against honest readings in which nothing changes. Some books a cell are
 * drawn in the build; {@code -Dporebench.promises=20} draws twenty times as many.
 */
class ControlChartPromiseTest {
    private static final int TIMES = Integer.getInteger("porebench.promises", 1);
    private static final double[] SIGMAS = {0.02, 0.05, 0.10, 0.15};
    private static final double[] DIVISIONS = {0.01, 0.05, 0.1};

    /** Half a percentage point of points, and a quarter of what is said, as the base shows the true scatter only roughly. */
    private static final double ALLOWED = 0.005;

    private static final double ALLOWED_SHARE = 0.25;

    @Test
    void chartsOfDeterminationsDoNotErrMoreOftenThanTheySay() {
        for (int base : new int[] {8, 12, 20}) {
            for (double division : DIVISIONS) {
                check(new HonestBook(PhasedChart.Kind.MEANS, 0.02, 0, new Dial(MeterType.B, division), base));
                check(new HonestBook(PhasedChart.Kind.MEANS, 0.05, 0.075, new Dial(MeterType.B, division), base));
                check(new HonestBook(PhasedChart.Kind.MEANS, 0.15, 0.075, new Dial(MeterType.B, division), base));
            }
        }
    }

    @Test
    void theOtherChartsDoNotErrMoreOftenThanTheySay() {
        for (PhasedChart.Kind kind : List.of(
                PhasedChart.Kind.MEAN_RANGE,
                PhasedChart.Kind.MEAN_DEVIATION,
                PhasedChart.Kind.EWMA,
                PhasedChart.Kind.CUSUM)) {
            check(new HonestBook(kind, 0.02, 0.02, new Dial(MeterType.B, 0.1), 8));
            check(new HonestBook(kind, 0.15, 0.15, new Dial(MeterType.B, 0.01), 8));
            check(new HonestBook(kind, 0.10, 0, new Dial(MeterType.B, 0.05), 20));
        }
    }

    /** Compares what each of many books is told with what then happens in it. */
    private static void check(HonestBook cell) {
        HonestBook.Alarms alarms = cell.alarms(40 * TIMES, new SplittableRandom(7));
        assertNoMore(cell + " after the base", alarms.seen(), alarms.said());
        assertNoMore(cell + " in the base", alarms.seenInBase(), alarms.saidOfBase());
    }

    private static void assertNoMore(String what, double[] seen, double[] said) {
        double[] excess = new double[seen.length];
        for (int i = 0; i < seen.length; i++) {
            excess[i] = seen[i] - (1 + ALLOWED_SHARE) * said[i];
        }
        Summary summary = Summary.of(excess);
        assertThat(summary.mean())
                .as(
                        "%s: seen %.4f, said %.4f",
                        what, Summary.of(seen).mean(), Summary.of(said).mean())
                .isLessThan(ALLOWED + 3 * summary.standardError().orElseThrow());
    }

    /** Twelve honest determinations, all of them the base: 38 to 69 of 100 charts of their single trials used to signal. */
    @Test
    void fewOfTwelveHonestDeterminationsSignal() {
        for (double sigma : SIGMAS) {
            for (double division : DIVISIONS) {
                for (double between : new double[] {0, 1, 2}) {
                    HonestBook cell = new HonestBook(
                            PhasedChart.Kind.MEANS, sigma, between * sigma, new Dial(MeterType.B, division), 12);
                    SplittableRandom random = new SplittableRandom(12);
                    int charts = 100 * TIMES;
                    int signal = 0;
                    for (int i = 0; i < charts; i++) {
                        double factor = cell.dial().anyFactor(random);
                        List<double[]> groups = new ArrayList<>();
                        for (int j = 0; j < 12; j++) {
                            groups.add(cell.determination(factor, 3, random));
                        }
                        for (boolean is : cell.chart(groups).signalling()) {
                            if (is) {
                                signal++;
                                break;
                            }
                        }
                    }
                    double share = (double) signal / charts;
                    assertThat(share).as("%s", cell).isLessThan(0.09 + 3 * Math.sqrt(0.09 * 0.91 / charts));
                }
            }
        }
    }
}
