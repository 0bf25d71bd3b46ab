package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.summary.Summary;

/** How often a control chart of determinations signals by chance, against what its page says of this very chart. */
final class ChartAlarmsPromise implements Promise {
    /** The scatter of a base of eight is known roughly, and so is what it makes of chance. */
    private static final double ABOUT = 1.25;

    @Override
    public String name() {
        return "Control charts";
    }

    @Override
    public String sentence() {
        return "a chart signals by chance at most a quarter more often than its page, which says about, has it";
    }

    @Override
    public int fewRuns() {
        return 4;
    }

    @Override
    public int manyRuns() {
        return 300;
    }

    /** Three trials a determination, the two usual rules. */
    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (MeterType type : MeterType.values()) {
            for (int base : new int[] {8, 20}) {
                for (double division : new double[] {0.01, 0.05, 0.1}) {
                    for (double sigma : new double[] {0.02, 0.05, 0.15}) {
                        for (double between : new double[] {0, 1.5 * sigma}) {
                            Dial dial = new Dial(type, division);
                            cells.add(cell(new HonestBook(PhasedChart.Kind.MEANS, sigma, between, dial, base), runs));
                        }
                    }
                }
            }
        }
        return cells;
    }

    private static Cell cell(HonestBook book, int runs) {
        HonestBook.Alarms alarms = book.alarms(runs, new SplittableRandom(11));
        double[] excess = new double[runs];
        for (int i = 0; i < runs; i++) {
            excess[i] = alarms.seen()[i] - ABOUT * alarms.said()[i];
        }
        return new Cell(
                String.format(
                        Locale.ROOT,
                        "Type %s, base of %d, division %s, scatter %s, days %s",
                        book.dial().type(),
                        book.base(),
                        book.dial().division(),
                        book.sigma(),
                        book.between() == 0 ? "alike" : "differ by 1.5 times that"),
                Cell.Way.AT_MOST,
                ABOUT * Summary.of(alarms.said()).mean(),
                Summary.of(alarms.seen()).mean(),
                Summary.of(excess).standardError().orElseThrow());
    }
}
