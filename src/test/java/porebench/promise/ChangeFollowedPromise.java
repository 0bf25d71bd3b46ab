package porebench.promise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import porebench.method.MeterType;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.ComparisonPlan.More;
import porebench.statistics.comparison.ComparisonVerdict;
import porebench.statistics.comparison.ReadingSets;

/** What comes of it where a person tests as many more trials as is said, looks again, and so on up to six looks and 30 more trials. */
final class ChangeFollowedPromise implements Promise {
    private static final double SAID = 0.15;
    private static final int MOST_LOOKS = 6;
    private static final int MOST_MORE = 30;

    @Override
    public String name() {
        return "Keep or replace, tested further as is said";
    }

    @Override
    public String sentence() {
        return "who tests as many more as is said, and looks again and again, replaces a factor that did not move in at most 15 of 100"
                + " cases, and keeps one that moved by the margin in at most 15";
    }

    @Override
    public int fewRuns() {
        return 3;
    }

    @Override
    public int manyRuns() {
        return 800;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (double division : new double[] {0.01, 0.1}) {
            for (double scatter : new double[] {0.02, 0.05}) {
                for (int trials : new int[] {2, 3, 4}) {
                    for (double moved : new double[] {0, ChangeVerdictPromise.MARGIN}) {
                        cells.add(cell(new Dial(MeterType.B, division), scatter, trials, moved, runs));
                    }
                }
            }
        }
        return cells;
    }

    private static Cell cell(Dial dial, double scatter, int trials, double moved, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_131L + trials);
        ComparisonVerdict wrong = moved == 0 ? ComparisonVerdict.REPLACE : ComparisonVerdict.KEEP;
        int errors = 0;
        for (int run = 0; run < runs; run++) {
            errors += followed(dial, scatter, trials, run % 2 == 0 ? moved : -moved, random) == wrong ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "division %s, scatter %s, begun with %d on each side, %s",
                        dial.division(),
                        scatter,
                        trials,
                        moved == 0 ? "not moved, replaced" : "moved by the margin, kept"),
                Cell.Way.AT_MOST,
                SAID,
                errors,
                runs);
    }

    private static ComparisonVerdict followed(
            Dial dial, double scatter, int trials, double moved, SplittableRandom random) {
        double factor = dial.anyFactor(random);
        double[] before = dial.read(factor, scatter, trials, random);
        double[] after = dial.read(factor + moved, scatter, trials, random);
        ComparisonVerdict verdict = ComparisonVerdict.TEST_MORE;
        for (int look = 0; look < MOST_LOOKS; look++) {
            BeforeAndAfter found = BeforeAndAfter.of(
                    ReadingSets.of(List.of(before)),
                    ReadingSets.of(List.of(after)),
                    dial.division(),
                    false,
                    Optional.empty());
            verdict = found.verdict(ChangeVerdictPromise.MARGIN);
            if (verdict != ComparisonVerdict.TEST_MORE) {
                break;
            }
            Optional<More> more = found.plan(ChangeVerdictPromise.MARGIN, OptionalDouble.empty())
                    .onEachSide();
            if (more.isEmpty() || more.get().readings() > MOST_MORE) {
                break;
            }
            int count = more.get().readings();
            before = joined(before, dial.read(factor, scatter, count, random));
            after = joined(after, dial.read(factor + moved, scatter, count, random));
        }
        return verdict;
    }

    private static double[] joined(double[] first, double[] then) {
        return DoubleStream.concat(Arrays.stream(first), Arrays.stream(then)).toArray();
    }
}
