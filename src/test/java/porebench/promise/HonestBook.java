package porebench.promise;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.SplittableRandom;
import porebench.statistics.control.ChartTerms;
import porebench.statistics.control.CusumChart;
import porebench.statistics.control.DrawnPoints;
import porebench.statistics.control.DriftLine;
import porebench.statistics.control.EwmaChart;
import porebench.statistics.control.FalseAlarms;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;
import porebench.statistics.summary.Summary;

/**
 * The lab book of a laboratory in which nothing changes.
 *
 * @param kind of the chart that is made of it
 * @param sigma scatter of trials, in % air
 * @param between what determinations differ beside it, in % air
 * @param dial the scale that is read
 * @param base how many determinations the limits rest on
 */
record HonestBook(PhasedChart.Kind kind, double sigma, double between, Dial dial, int base) {
    private static final int FOLLOWING = 60;

    double[] determination(double factor, int trials, SplittableRandom random) {
        return dial.read(factor + between * random.nextGaussian(), sigma, trials, random);
    }

    PhasedChart chart(List<double[]> groups) {
        double width = kind == PhasedChart.Kind.CUSUM ? CusumChart.USUAL_INTERVAL : EwmaChart.USUAL_WIDTH;
        ChartTerms terms = ChartTerms.usual()
                .withWidth(width)
                .withDivision(dial.division())
                .withRules(EnumSet.of(RunRule.BEYOND_LIMITS, RunRule.NINE_ON_ONE_SIDE));
        double weight = kind == PhasedChart.Kind.CUSUM ? CusumChart.USUAL_SLACK : EwmaChart.USUAL_WEIGHT;
        return PhasedChart.of(groups, List.of(), kind, weight, new PhasedChart.Base(0, base, true), terms);
    }

    /**
     * What is said and seen in each of some books.
     *
     * @param said false alarms a determination, as each book is told
     * @param seen false alarms a determination after the base
     * @param saidOfBase share of charts of the base alone with an alarm, as each book is told
     * @param seenInBase 1 where the base has an alarm, else 0
     */
    record Alarms(double[] said, double[] seen, double[] saidOfBase, double[] seenInBase) {}

    /** Compares what each of many books is told with what then happens in it. */
    Alarms alarms(int books, SplittableRandom random) {
        Alarms alarms = new Alarms(new double[books], new double[books], new double[books], new double[books]);
        for (int i = 0; i < books; i++) {
            double factor = dial.anyFactor(random);
            List<double[]> groups = new ArrayList<>();
            for (int j = 0; j < base + FOLLOWING; j++) {
                groups.add(determination(factor, 3, random));
            }
            PhasedChart chart = chart(groups);
            boolean[] signalling = chart.signalling();
            for (int j = 0; j < signalling.length; j++) {
                boolean begins = signalling[j] && (j == 0 || j == base || !signalling[j - 1]);
                alarms.seenInBase()[i] = j < base && signalling[j] ? 1 : alarms.seenInBase()[i];
                alarms.seen()[i] += j >= base && begins ? 1.0 / FOLLOWING : 0;
            }
            FalseAlarms told = told(chart, i);
            alarms.said()[i] = (double) told.alarms() / told.points();
            alarms.saidOfBase()[i] = told.shareWithAlarm();
        }
        return alarms;
    }

    private FalseAlarms told(PhasedChart chart, long seed) {
        PhasedChart.Spread spread =
                chart.phases().get(0).chart().meaningful().orElseThrow().spreads();
        DrawnPoints.Process process = DrawnPoints.Process.plain(
                        Collections.nCopies(base, 3), spread.between(), spread.within(), dial.division())
                .noQuieterThanItsDivision();
        FalseAlarms.Signals signals = drawn -> chart(drawn.groups()).signalling();
        return FalseAlarms.simulated(process, signals, base(), signals, 10, seed);
    }

    /** Says whether a drift is said where there is none. */
    boolean isDriftSaid(int count, int mixes, SplittableRandom random) {
        double[] factors = {dial.anyFactor(random), dial.anyFactor(random)};
        List<DriftLine.Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int mix = i % mixes;
            double[] values = determination(factors[mix], 2 + random.nextInt(4), random);
            points.add(
                    new DriftLine.Point("M-" + mix, 9.0 * i, Summary.of(values).mean()));
        }
        DriftLine.Judgement judged = DriftLine.through(points, dial.division(), 0.95)
                .orElseThrow()
                .judged(9.0 * (count - 1), dial.division());
        return judged == DriftLine.Judgement.RISES || judged == DriftLine.Judgement.FALLS;
    }
}
