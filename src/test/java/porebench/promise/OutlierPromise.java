package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.method.trial.Outliers;
import porebench.method.trial.Scatter;

/** How often a faultless trial is named. */
final class OutlierPromise implements Promise {
    @Override
    public String name() {
        return "A trial that stands out";
    }

    @Override
    public String sentence() {
        return "of 100 faultless determinations at most 1 has a trial named with an alarm, and at most 5 one named at all";
    }

    @Override
    public int fewRuns() {
        return 15;
    }

    @Override
    public int manyRuns() {
        return 600;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (MeterType type : MeterType.values()) {
            for (double division : new double[] {0.01, 0.1}) {
                for (double sigma : new double[] {0.02, 0.05, 0.15}) {
                    for (int count : new int[] {4, 6, 12}) {
                        cells.addAll(cells(new Dial(type, division), sigma, count, runs));
                    }
                }
            }
        }
        return cells;
    }

    private static List<Cell> cells(Dial dial, double sigma, int count, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_134L + count + Math.round(1000 * sigma));
        int alarms = 0;
        int named = 0;
        for (int run = 0; run < runs; run++) {
            Outliers outliers = Outliers.of(
                    dial.division(),
                    Scatter.ofTheDial(dial.type(), dial.division()),
                    dial.read(dial.anyFactor(random), sigma, count, random));
            alarms += outliers.suspects().isPresent() ? 1 : 0;
            named += outliers.suspects().or(outliers::stragglers).isPresent() ? 1 : 0;
        }
        String of = String.format(
                Locale.ROOT, "Type %s, division %s, scatter %s, %d trials", dial.type(), dial.division(), sigma, count);
        return List.of(
                Cell.counted(of + ": alarm", Cell.Way.AT_MOST, Outliers.SUSPECT, alarms, runs),
                Cell.counted(of + ": named", Cell.Way.AT_MOST, Outliers.STRAGGLER, named, runs));
    }
}
