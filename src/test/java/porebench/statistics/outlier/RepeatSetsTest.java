package porebench.statistics.outlier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.MeanInterval;
import porebench.statistics.summary.Summary;

class RepeatSetsTest {
    private static final RepeatSets.Judging JUDGING = new RepeatSets.Judging(0.1, 0.1, 0.05);

    private static RepeatSets of(List<double[]> sets) {
        int[] ends = new int[sets.size()];
        double[] values = sets.stream().flatMapToDouble(Arrays::stream).toArray();
        int end = 0;
        for (int i = 0; i < ends.length; i++) {
            end += sets.get(i).length;
            ends[i] = end;
        }
        return RepeatSets.of(values, ends, JUDGING);
    }

    /** Sets of 1 to 12 readings, some of them read to a division of 0.1, some with one reading far out. */
    private static List<double[]> manySets() {
        SplittableRandom luck = new SplittableRandom(20_261_125L);
        List<double[]> sets = new ArrayList<>();
        for (int i = 0; i < 5_000; i++) {
            double[] set = new double[1 + luck.nextInt(12)];
            boolean divided = luck.nextInt(2) == 0;
            for (int j = 0; j < set.length; j++) {
                double reading = 0.4 + 0.12 * luck.nextGaussian();
                set[j] = divided ? Math.rint(reading * 10) / 10 : reading;
            }
            if (luck.nextInt(4) == 0) {
                set[luck.nextInt(set.length)] += 0.6;
            }
            sets.add(set);
        }
        sets.add(new double[] {0.4, 0.4, 0.4, 0.4, 0.5});
        sets.add(new double[] {0.4, 0.4, 0.4, 0.4, 0.7});
        sets.add(new double[] {0.4, 0.5});
        sets.add(new double[] {1e9 + 0.4, 1e9 + 0.5, 1e9 + 0.4, 1e9 + 0.3});
        return sets;
    }

    @Test
    void saysOfEverySetWhatTheClassesOfOneSetSay() {
        List<double[]> all = manySets();
        RepeatSets sets = of(all);
        assertThat(sets.size()).isEqualTo(all.size());
        int outliers = 0;
        for (int i = 0; i < sets.size(); i++) {
            double[] values = all.get(i);
            Summary one = Summary.of(values);
            assertThat(sets.count(i)).isEqualTo(one.count());
            assertThat(sets.mean(i)).isCloseTo(one.mean(), within(1e-15 * Math.max(1, one.mean())));
            assertThat(sets.range(i)).isEqualTo(one.range());
            if (values.length == 1) {
                assertThat(sets.standardDeviation(i)).isNaN();
                assertThat(sets.halfWidth(i)).isNaN();
                assertThat(sets.isWithinCriticalRange(i)).isTrue();
            } else {
                assertThat(sets.standardDeviation(i))
                        .isCloseTo(one.standardDeviation().orElseThrow(), within(1e-15));
                assertThat(sets.halfWidth(i))
                        .isCloseTo(MeanInterval.of(one, 0.95).orElseThrow().halfWidth(), within(2e-14));
                assertThat(sets.isWithinCriticalRange(i))
                        .isEqualTo(CriticalRange.check(one.range(), one.count(), JUDGING.repeatability())
                                .passes());
            }
            Optional<GrubbsTest> grubbs = GrubbsTest.of(values);
            assertThat(sets.farthest(i).isPresent()).isEqualTo(grubbs.isPresent());
            assertThat(Double.isNaN(sets.grubbs(i))).isEqualTo(grubbs.isEmpty());
            if (grubbs.isPresent()) {
                assertThat(sets.grubbs(i)).isCloseTo(grubbs.get().statistic(), within(1e-12));
                assertThat(sets.farthest(i)).hasValue(grubbs.get().index());
            }
            boolean outlier = grubbs.filter(test -> test.isOutlier(0.05, 0.1)).isPresent();
            assertThat(sets.hasOutlier(i)).as("set " + i).isEqualTo(outlier);
            outliers += outlier ? 1 : 0;
        }
        assertThat(outliers)
                .as("sets with an outlier, so that both answers are met")
                .isBetween(500, 2_000);
    }

    @Test
    void noSetsAreNoSets() {
        assertThat(RepeatSets.of(new double[0], new int[0], JUDGING).size()).isZero();
    }

    @Test
    void refusesWhatIsNotCovered() {
        double[] values = {0.4, 0.5, 0.6};
        assertThatThrownBy(() -> RepeatSets.of(values, new int[] {2}, JUDGING))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("last of ends must be the count of values, 3, but is 2");
        assertThatThrownBy(() -> RepeatSets.of(values, new int[] {2, 2, 3}, JUDGING))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("ends[1] must be at least 3, but is 2");
        assertThatThrownBy(() -> RepeatSets.of(new double[] {0.4, Double.NaN}, new int[] {2}, JUDGING))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("values from 0 to 1 must have finite squares, but have NaN");
        assertThatThrownBy(() -> RepeatSets.of(new double[] {0, 1e200}, new int[] {2}, JUDGING))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("values from 0 to 1 must have finite squares, but have Infinity");
        assertThatThrownBy(() -> new RepeatSets.Judging(0, 0.1, 0.05))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("repeatability");
    }
}
