package porebench.promise;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import porebench.evidence.CountedTrials;
import porebench.evidence.InTheBowl;
import porebench.evidence.LaboratoryScatter;
import porebench.method.MeterType;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.BetweenSets;

/** The 95 % interval of the difference between trials before and after a change. */
final class ChangeIntervalPromise implements Promise {
    private static final int[][] OF_ONE = {{1, 2}, {1, 3}, {1, 4}, {1, 8}, {1, 12}};
    private static final int[][] OF_SEVERAL = {{2, 3}, {3, 3}, {4, 2}};

    @Override
    public String name() {
        return "Before and after a change";
    }

    @Override
    public String sentence() {
        return "the 95 % interval of a difference holds the true one";
    }

    @Override
    public int fewRuns() {
        return 40;
    }

    @Override
    public int manyRuns() {
        return 5000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (MeterType type : MeterType.values()) {
            for (double division : new double[] {0.01, 0.1}) {
                for (double scatter : new double[] {0.02, 0.05, 0.1}) {
                    Dial dial = new Dial(type, division);
                    for (int[] sizes : OF_ONE) {
                        cells.add(cell(new ChangeBench(dial, scatter, 0), sizes, sizes, runs));
                    }
                    for (double between : new double[] {0, 0.05}) {
                        for (int[] sizes : OF_SEVERAL) {
                            cells.add(cell(new ChangeBench(dial, scatter, between), sizes, sizes, runs));
                        }
                    }
                    cells.add(cell(new ChangeBench(dial, scatter, 0.05), new int[] {4, 3}, new int[] {1, 3}, runs));
                    cells.add(cell(new ChangeBench(dial, scatter, 0.05), new int[] {3, 4}, new int[] {1, 2}, runs));
                }
            }
        }
        for (double division : new double[] {0.01, 0.1}) {
            for (double between : new double[] {0, 0.03, 0.08}) {
                cells.add(inALaboratory(
                        new ChangeBench(new Dial(MeterType.B, division), 0.05, between), Math.max(40, runs / 5)));
            }
        }
        return cells;
    }

    private static Cell cell(ChangeBench bench, int[] before, int[] after, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_128L + before[0] + 10L * before[1]);
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            hits += holds(bench, before, after, Optional.empty(), random) ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT, "%s, %d of %d against %d of %d", bench, before[0], before[1], after[0], after[1]),
                Cell.Way.AT_LEAST,
                BeforeAndAfter.CONFIDENCE,
                hits,
                runs);
    }

    private static boolean holds(
            ChangeBench bench, int[] before, int[] after, Optional<BetweenSets> between, SplittableRandom random) {
        double factor = bench.dial().anyFactor(random);
        double moved = bench.dial().division() * random.nextDouble();
        BeforeAndAfter found = BeforeAndAfter.of(
                bench.draw(factor, before[0], before[1], random),
                bench.draw(factor + moved, after[0], after[1], random),
                bench.dial().division(),
                bench.dial().type() == MeterType.A,
                between);
        return Math.abs(found.difference() - moved) <= found.halfWidth();
    }

    /** One determination of three on each side, in a laboratory of eight other mixes with two determinations of three each. */
    private static Cell inALaboratory(ChangeBench bench, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_129L);
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            List<CountedTrials> others = new ArrayList<>();
            for (int mix = 0; mix < 8; mix++) {
                double factor = bench.dial().anyFactor(random) + 0.2 * random.nextGaussian();
                for (int set = 0; set < 2; set++) {
                    others.add(counted(bench, factor, mix, set, random));
                }
            }
            Optional<BetweenSets> between = LaboratoryScatter.ofCounted(others).betweenDeterminations(MeterType.B);
            hits += holds(bench, new int[] {1, 3}, new int[] {1, 3}, between, random) ? 1 : 0;
        }
        return Cell.counted(
                bench + ", 1 of 3 against 1 of 3 in a laboratory of 8 mixes",
                Cell.Way.AT_LEAST,
                BeforeAndAfter.CONFIDENCE,
                hits,
                runs);
    }

    private static CountedTrials counted(ChangeBench bench, double factor, int mix, int set, SplittableRandom random) {
        double[] read = bench.dial().read(factor + bench.between() * random.nextGaussian(), bench.scatter(), 3, random);
        String id = "M-" + mix;
        return new CountedTrials(
                new DeterminationId(id + "/" + set),
                new MixId(id),
                1,
                Map.of(new SourceId("S-" + mix), 1),
                Collections.nCopies(read.length, MeterType.B),
                Collections.nCopies(read.length, LocalDate.EPOCH.plusDays(set).toString()),
                read,
                InTheBowl.UNKNOWN);
    }
}
