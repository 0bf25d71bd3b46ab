package porebench.promise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import porebench.statistics.ChartTerms;
import porebench.statistics.CusumChart;
import porebench.statistics.DrawnPoints;
import porebench.statistics.DriftLine;
import porebench.statistics.EwmaChart;
import porebench.statistics.FalseAlarms;
import porebench.statistics.PhasedChart;
import porebench.statistics.RunRule;
import porebench.statistics.Summary;

/**
 * What is said of false alarms and of drifts, against honest readings in which nothing changes. Some books a cell are
 * drawn in the build; {@code -Dporebench.promises=20} draws twenty times as many.
 */
class ControlChartPromiseTest {
    private static final int TIMES = Integer.getInteger("porebench.promises", 1);
    private static final int FOLLOWING = 60;
    private static final double[] SIGMAS = {0.02, 0.05, 0.10, 0.15};
    private static final double[] DIVISIONS = {0.01, 0.05, 0.1};

    /** Half a percentage point of points, and a quarter of what is said, as the base shows the true scatter only roughly. */
    private static final double ALLOWED = 0.005;

    private static final double ALLOWED_SHARE = 0.25;

    /** One laboratory: scatter of trials, what determinations differ beside it, the division, how many are in the base. */
    private record Cell(PhasedChart.Kind kind, double sigma, double between, double division, int base) {
        double factor(Random random) {
            return 0.4 + division * random.nextDouble();
        }

        double[] determination(double factor, int trials, Random random) {
            double own = between * random.nextGaussian();
            double[] values = new double[trials];
            for (int i = 0; i < trials; i++) {
                values[i] = Math.rint((factor + own + sigma * random.nextGaussian()) / division) * division;
            }
            return values;
        }

        PhasedChart chart(List<double[]> groups) {
            double width = kind == PhasedChart.Kind.CUSUM ? CusumChart.USUAL_INTERVAL : EwmaChart.USUAL_WIDTH;
            ChartTerms terms = ChartTerms.usual()
                    .withWidth(width)
                    .withDivision(division)
                    .withRules(EnumSet.of(RunRule.BEYOND_LIMITS, RunRule.NINE_ON_ONE_SIDE));
            double weight = kind == PhasedChart.Kind.CUSUM ? CusumChart.USUAL_SLACK : EwmaChart.USUAL_WEIGHT;
            return PhasedChart.of(groups, List.of(), kind, weight, new PhasedChart.Base(0, base, true), terms);
        }
    }

    @Test
    void chartsOfDeterminationsDoNotErrMoreOftenThanTheySay() {
        for (int base : new int[] {8, 12, 20}) {
            for (double division : DIVISIONS) {
                check(new Cell(PhasedChart.Kind.MEANS, 0.02, 0, division, base));
                check(new Cell(PhasedChart.Kind.MEANS, 0.05, 0.075, division, base));
                check(new Cell(PhasedChart.Kind.MEANS, 0.15, 0.075, division, base));
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
            check(new Cell(kind, 0.02, 0.02, 0.1, 8));
            check(new Cell(kind, 0.15, 0.15, 0.01, 8));
            check(new Cell(kind, 0.10, 0, 0.05, 20));
        }
    }

    /** Compares what each of many books is told with what then happens in it. */
    private static void check(Cell cell) {
        int books = 40 * TIMES;
        Random random = new Random(7);
        double[] said = new double[books];
        double[] seen = new double[books];
        double[] saidOfBase = new double[books];
        double[] seenInBase = new double[books];
        for (int i = 0; i < books; i++) {
            double factor = cell.factor(random);
            List<double[]> groups = new ArrayList<>();
            for (int j = 0; j < cell.base() + FOLLOWING; j++) {
                groups.add(cell.determination(factor, 3, random));
            }
            PhasedChart chart = cell.chart(groups);
            boolean[] signalling = chart.signalling();
            for (int j = 0; j < signalling.length; j++) {
                boolean begins = signalling[j] && (j == 0 || j == cell.base() || !signalling[j - 1]);
                seenInBase[i] = j < cell.base() && signalling[j] ? 1 : seenInBase[i];
                seen[i] += j >= cell.base() && begins ? 1.0 / FOLLOWING : 0;
            }
            FalseAlarms told = told(cell, chart, i);
            said[i] = (double) told.alarms() / told.points();
            saidOfBase[i] = told.shareWithAlarm();
        }
        assertNoMore(cell + " after the base", seen, said);
        assertNoMore(cell + " in the base", seenInBase, saidOfBase);
    }

    private static FalseAlarms told(Cell cell, PhasedChart chart, long seed) {
        PhasedChart.Spread spread =
                chart.phases().get(0).chart().meaningful().orElseThrow().spreads();
        DrawnPoints.Process process = DrawnPoints.Process.plain(
                        Collections.nCopies(cell.base(), 3), spread.between(), spread.within(), cell.division())
                .noQuieterThanItsDivision();
        FalseAlarms.Signals signals = drawn -> cell.chart(drawn.groups()).signalling();
        return FalseAlarms.simulated(process, signals, cell.base(), signals, 10, seed);
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
                    Cell cell = new Cell(PhasedChart.Kind.MEANS, sigma, between * sigma, division, 12);
                    Random random = new Random(12);
                    int charts = 100 * TIMES;
                    int signal = 0;
                    for (int i = 0; i < charts; i++) {
                        double factor = cell.factor(random);
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

    /** Without a drift, no more than 5 of 100 sentences say that there is one, and half a one more. */
    @Test
    void aDriftIsSaidNoMoreOftenThanFiveTimesInAHundredWhereThereIsNone() {
        int runs = 250 * TIMES;
        for (double sigma : SIGMAS) {
            for (double division : DIVISIONS) {
                for (double between : new double[] {0, 1, 2}) {
                    Cell cell = new Cell(PhasedChart.Kind.MEANS, sigma, between * sigma, division, 8);
                    Random random = new Random(5);
                    int said = 0;
                    for (int i = 0; i < runs; i++) {
                        said += isDrift(cell, 6 + i % 15, 1 + i % 2, random) ? 1 : 0;
                    }
                    double share = (double) said / runs;
                    assertThat(share).as("%s", cell).isLessThan(0.055 + 3 * Math.sqrt(0.05 * 0.95 / runs));
                }
            }
        }
    }

    private static boolean isDrift(Cell cell, int count, int mixes, Random random) {
        double[] factors = {cell.factor(random), cell.factor(random)};
        List<DriftLine.Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int mix = i % mixes;
            double[] values = cell.determination(factors[mix], 2 + random.nextInt(4), random);
            points.add(
                    new DriftLine.Point("M-" + mix, 9.0 * i, Summary.of(values).mean()));
        }
        DriftLine.Judgement judged = DriftLine.through(points, cell.division(), 0.95)
                .orElseThrow()
                .judged(9.0 * (count - 1), cell.division());
        return judged == DriftLine.Judgement.RISES || judged == DriftLine.Judgement.FALLS;
    }
}
