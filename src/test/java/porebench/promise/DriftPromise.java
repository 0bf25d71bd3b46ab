package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.statistics.control.PhasedChart;

/** How often a drift is said where the factor has none. */
final class DriftPromise implements Promise {
    private static final double ALARM = 0.05;

    @Override
    public String name() {
        return "A drift";
    }

    @Override
    public String sentence() {
        return "of 100 lab books without a drift, at most 5 are told of one";
    }

    @Override
    public int fewRuns() {
        return 250;
    }

    @Override
    public int manyRuns() {
        return 5000;
    }

    /** Six to twenty determinations of two to five trials, nine days apart, of one mix or two in turn. */
    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (MeterType type : MeterType.values()) {
            for (double division : new double[] {0.01, 0.05, 0.1}) {
                for (double sigma : new double[] {0.02, 0.05, 0.10, 0.15}) {
                    for (double between : new double[] {0, 1, 2}) {
                        Dial dial = new Dial(type, division);
                        cells.add(cell(new HonestBook(PhasedChart.Kind.MEANS, sigma, between * sigma, dial, 8), runs));
                    }
                }
            }
        }
        return cells;
    }

    private static Cell cell(HonestBook book, int runs) {
        SplittableRandom random = new SplittableRandom(5);
        int said = 0;
        for (int i = 0; i < runs; i++) {
            said += book.isDriftSaid(6 + i % 15, 1 + i % 2, random) ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "Type %s, division %s, scatter %s, days differ by %s",
                        book.dial().type(),
                        book.dial().division(),
                        book.sigma(),
                        book.between()),
                Cell.Way.AT_MOST,
                ALARM,
                said,
                runs);
    }
}
