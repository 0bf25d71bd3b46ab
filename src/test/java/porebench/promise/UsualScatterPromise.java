package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.method.trial.LaboratoryCheck;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

/** How often faultless trials are said to spread wider than the laboratory's usually do, where all mixes scatter alike. */
final class UsualScatterPromise implements Promise {
    private static final int OTHERS = 8;
    private static final double ALARM = 0.01;

    @Override
    public String name() {
        return "Wider than this laboratory's trials";
    }

    @Override
    public String sentence() {
        return "of 100 faultless determinations at most 1 is said to spread wider than this laboratory's trials usually do";
    }

    @Override
    public int fewRuns() {
        return 200;
    }

    @Override
    public int manyRuns() {
        return 4000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (MeterType type : MeterType.values()) {
            for (double division : new double[] {0.01, 0.05, 0.1}) {
                for (double sigma : new double[] {0.02, 0.05, 0.1, 0.15}) {
                    for (int count : new int[] {2, 3, 6, 12}) {
                        cells.add(cell(new Dial(type, division), sigma, count, runs));
                    }
                }
            }
        }
        return cells;
    }

    /** Beside eight other mixes with a determination of three trials each. */
    private static Cell cell(Dial dial, double sigma, int count, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_135L + count + Math.round(1000 * sigma));
        int alarms = 0;
        for (int run = 0; run < runs; run++) {
            List<Summary> others = new ArrayList<>();
            for (int i = 0; i < OTHERS; i++) {
                others.add(Summary.of(dial.read(dial.anyFactor(random), sigma, 3, random)));
            }
            LaboratoryCheck check = LaboratoryCheck.of(
                            dial.read(dial.anyFactor(random), sigma, count, random),
                            dial.type(),
                            dial.division(),
                            PooledDeviation.of(others))
                    .orElseThrow();
            alarms += check.passes() ? 0 : 1;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "Type %s, division %s, scatter %s, %d trials",
                        dial.type(),
                        dial.division(),
                        sigma,
                        count),
                Cell.Way.AT_MOST,
                ALARM,
                alarms,
                runs);
    }
}
