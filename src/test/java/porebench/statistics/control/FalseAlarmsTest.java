package porebench.statistics.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import porebench.statistics.summary.Summary;

class FalseAlarmsTest {
    private static final PhasedChart.Base ALL = new PhasedChart.Base(0, 100, true);

    private static DrawnPoints.Process process(int count, double between, double within, double division) {
        return DrawnPoints.Process.plain(Collections.nCopies(count, 2), between, within, division);
    }

    private static double mean(double[] values) {
        return Summary.of(values).mean();
    }

    /** Source: C. W. Champ and W. H. Woodall, Technometrics 29 (1987): one in 370.4 by known limits of 3 (recalled). */
    @Test
    void byKnownLimitsItIsThePublishedRunLength() {
        ChartTerms terms = ChartTerms.usual().withKnownCentre(0).withKnownSigma(1);
        FalseAlarms.Signals level = drawn -> {
            boolean[] signals = new boolean[drawn.groups().size()];
            ShewhartChart.individuals(drawn.single(), terms)
                    .meaningful()
                    .orElseThrow()
                    .level()
                    .forEach(point -> signals[point.index()] = !point.signals().isEmpty());
            return signals;
        };
        DrawnPoints.Process normal =
                DrawnPoints.Process.plain(List.of(1), 0, 1, 0).about(0);
        FalseAlarms found = FalseAlarms.simulated(normal, level, 1, level, 8000, 1987);
        assertThat(found.points()).isEqualTo(400_000);
        // About 1080 alarms: known to 3 %.
        assertThat(found.pointsPerAlarm().orElseThrow()).isCloseTo(370.4, withinPercentage(10));
    }

    /** Points 1, 2 and 4 of a chart are two alarms, and one chart with an alarm. */
    @Test
    void signalsAtPointsThatFollowEachOtherAreOneAlarm() {
        FalseAlarms.Signals three = drawn -> {
            boolean[] signals = new boolean[drawn.groups().size()];
            signals[1] = true;
            signals[2] = true;
            signals[4] = true;
            return signals;
        };
        FalseAlarms found = FalseAlarms.simulated(process(5, 0, 1, 0), three, 1, three, 10, 3);
        assertThat(found.alarms()).isEqualTo(20);
        assertThat(found.points()).isEqualTo(500);
        assertThat(found.pointsPerAlarm()).hasValue(25);
        assertThat(found.shareWithAlarm()).isEqualTo(1);
        // What lies in the base counts for the chart, and not for the points after it.
        assertThat(FalseAlarms.simulated(process(5, 0, 1, 0), three, 3, three, 10, 3)
                        .alarms())
                .isEqualTo(10);
    }

    @Test
    void withoutAlarmsItIsOnlyKnownThatTheyAreRare() {
        FalseAlarms.Signals none = drawn -> new boolean[drawn.groups().size()];
        FalseAlarms found = FalseAlarms.simulated(process(5, 0, 1, 0), none, 1, none, 314, 3);
        assertThat(found.pointsPerAlarm()).isEmpty();
        assertThat(found.rarerThan()).isEqualTo(1000);
        assertThat(found.shareWithAlarm()).isZero();
    }

    @Test
    void theSameSeedGivesTheSameAnswer() {
        FalseAlarms.Signals signals =
                drawn -> PhasedChart.of(drawn.groups(), List.of(), PhasedChart.Kind.MEANS, 0, ALL, ChartTerms.usual())
                        .signalling();
        FalseAlarms one = FalseAlarms.simulated(process(12, 0.1, 0.1, 0.1), signals, 12, signals, 50, 3);
        assertThat(FalseAlarms.simulated(process(12, 0.1, 0.1, 0.1), signals, 12, signals, 50, 3))
                .isEqualTo(one);
        assertThat(FalseAlarms.simulated(process(12, 0.1, 0.1, 0.1), signals, 12, signals, 50, 4))
                .isNotEqualTo(one);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FalseAlarms.simulated(process(12, 0, 1, 0), signals, 0, signals, 50, 3));
    }

    /** Means of two: variance 0.3^2 + 0.4^2 / 2 = 0.17; a division of 0.1 adds 0.01 / 24. */
    @Test
    void whatIsDrawnSpreadsAsItShouldAndIsRounded() {
        DrawnPoints drawn = DrawnPoints.of(process(20_000, 0.3, 0.4, 0.1), 20_000, ALL, new Random(5));
        double[] means =
                drawn.groups().stream().mapToDouble(FalseAlarmsTest::mean).toArray();
        double deviation = Summary.of(means).standardDeviation().orElseThrow();
        assertThat(deviation * deviation).isCloseTo(0.1704, withinPercentage(4));
        assertThat(drawn.groups())
                .allSatisfy(group -> assertThat(Math.rint(group[0] * 10) / 10).isCloseTo(group[0], offset(1e-9)));
        assertThat(drawn.lots()).doesNotHaveDuplicates();
    }

    /** Two kinds, each about its own mean in the base of four points: their base values have the mean 0. */
    @Test
    void severalKindsAreTakenFromTheirOwnMeans() {
        DrawnPoints.Process two = new DrawnPoints.Process(
                List.of(2, 2, 2, 2, 2),
                List.of(0, 1, 2, 3, 4),
                List.of(0, 1, 0, 1, 2),
                0.3,
                0.4,
                0,
                OptionalDouble.of(7),
                new PhasedChart.Base(0, 4, true));
        List<double[]> groups =
                DrawnPoints.of(two, 5, two.base(), new Random(5)).groups();
        assertThat(mean(groups.get(0)) + mean(groups.get(2))).isCloseTo(0, offset(1e-12));
        assertThat(mean(groups.get(1)) + mean(groups.get(3))).isCloseTo(0, offset(1e-12));
        // The third begins after the base, and is taken from its first point.
        assertThat(mean(groups.get(4))).isCloseTo(0, offset(1e-12));
    }

    /** 0.1 / sqrt(12) = 0.0289 of a mean; of 0.02 in a mean of two 0.0141, the rest is what they differ. */
    @Test
    void aQuietBaseIsDrawnAsQuietAsItsDivision() {
        DrawnPoints.Process raised = process(4, 0, 0.02, 0.1).noQuieterThanItsDivision();
        assertThat(raised.between() * raised.between()).isCloseTo(0.01 / 12 - 0.0002, withinPercentage(0.01));
        DrawnPoints.Process loud = process(4, 0.1, 0.1, 0.1);
        assertThat(loud.noQuieterThanItsDivision()).isSameAs(loud);
    }

    @Test
    void noRuleButTheLimitsIsAskedOfTrials() {
        ChartTerms all = ChartTerms.usual().withRules(Set.of(RunRule.values()));
        double[] high = new double[20];
        Random random = new Random(1);
        for (int i = 0; i < 20; i++) {
            high[i] = (i < 10 ? 0 : 1) + 0.4 * random.nextGaussian();
        }
        PhasedChart chart = PhasedChart.ofTrials(
                high, Collections.nCopies(20, 1), List.of(), new PhasedChart.Base(0, 10, true), all);
        chart.phases()
                .get(0)
                .chart()
                .meaningful()
                .orElseThrow()
                .level()
                .forEach(point -> assertThat(point.signals()).isSubsetOf(RunRule.BEYOND_LIMITS));
    }
}
