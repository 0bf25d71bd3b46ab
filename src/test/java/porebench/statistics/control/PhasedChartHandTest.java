package porebench.statistics.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.statistics.Judged;
import porebench.statistics.control.PhasedChart.Base;
import porebench.statistics.control.PhasedChart.Kind;
import porebench.statistics.control.PhasedChart.Limited;

/** Phases worked with a pencil; d2 of pairs is 2 / sqrt(pi). */
class PhasedChartHandTest {
    private static final double PAIR = 2 / Math.sqrt(Math.PI);
    private static final List<double[]> BROKEN = singles(1, 3, 2, 10, 12);
    private static final Base ALL = new Base(0, 20, true);

    private static List<double[]> singles(double... values) {
        return Arrays.stream(values).mapToObj(value -> new double[] {value}).toList();
    }

    private static PhasedChart individuals(List<double[]> groups, List<Integer> starts, Base base) {
        return PhasedChart.of(groups, starts, Kind.MEANS, 0, base, ChartTerms.usual());
    }

    private static Limited limited(PhasedChart chart, int phase) {
        return chart.phases().get(phase).chart().meaningful().orElseThrow();
    }

    /** Moving ranges 2 and 1, then 2: 5/3 on average; the 8 between the phases is none. The mean of all is 28/5. */
    @Test
    void aMovingRangeNeverReachesOverABreak() {
        PhasedChart chart = individuals(BROKEN, List.of(3), ALL);
        assertThat(chart.phases()).extracting(PhasedChart.Phase::first).containsExactly(0, 3);
        assertThat(chart.phases()).extracting(PhasedChart.Phase::count).containsExactly(3, 2);
        Limited second = limited(chart, 1);
        assertThat(second.centre()).isCloseTo(5.6, offset(1e-12));
        assertThat(second.sigma()).isCloseTo(5.0 / 3 / PAIR, offset(1e-12));
        assertThat(second.base()).isEqualTo(5);
        assertThat(second.level()).extracting(ChartPoint::index).containsExactly(3, 4);
        assertThat(second.spread()).extracting(ChartPoint::index).containsExactly(4);
        assertThat(second.level().get(0).high()).isCloseTo(5.6 + 5 / PAIR, offset(1e-12));
        assertThat(limited(chart, 0).sigma()).isEqualTo(second.sigma());
        // Without the break the 8 counts: (2 + 1 + 8 + 2) / 4.
        assertThat(limited(individuals(BROKEN, List.of(), ALL), 0).sigma()).isCloseTo(13.0 / 4 / PAIR, offset(1e-12));
    }

    @Test
    void limitsFoundAnewAreThoseOfThePhaseAlone() {
        PhasedChart chart = individuals(BROKEN, List.of(3), new Base(0, 20, false));
        assertThat(limited(chart, 0).centre()).isCloseTo(2, offset(1e-12));
        assertThat(limited(chart, 0).sigma()).isCloseTo(1.5 / PAIR, offset(1e-12));
        assertThat(limited(chart, 1).centre()).isCloseTo(11, offset(1e-12));
        assertThat(limited(chart, 1).sigma()).isCloseTo(2 / PAIR, offset(1e-12));
        Limited ofTwo = limited(individuals(BROKEN, List.of(3), new Base(0, 2, false)), 0);
        assertThat(ofTwo.base()).isEqualTo(2);
        assertThat(ofTwo.centre()).isCloseTo(2, offset(1e-12));
        assertThat(ofTwo.sigma()).isCloseTo(2 / PAIR, offset(1e-12));
    }

    @Test
    void aBaseInTheMiddleOrAtTheEndHoldsForAllPhases() {
        PhasedChart chart = individuals(BROKEN, List.of(3), new Base(3, 2, true));
        assertThat(limited(chart, 0).centre()).isCloseTo(11, offset(1e-12));
        assertThat(limited(chart, 0).sigma()).isCloseTo(2 / PAIR, offset(1e-12));
        assertThat(limited(chart, 0).base()).isEqualTo(2);
    }

    @Test
    void aPhaseOrABaseTooShortForLimitsHasNone() {
        assertThat(individuals(singles(1, 3, 9), List.of(2), new Base(0, 20, false))
                        .phases()
                        .get(1)
                        .chart()
                        .whyWithheld())
                .contains(Judged.Reason.TOO_FEW);
        assertThat(individuals(BROKEN, List.of(3), new Base(5, 1, true)).phases())
                .allSatisfy(phase -> assertThat(phase.chart().whyWithheld()).contains(Judged.Reason.TOO_FEW));
        // Two points, but each in a phase of its own.
        assertThat(individuals(singles(1, 3), List.of(1), ALL).phases())
                .allSatisfy(phase -> assertThat(phase.chart().whyWithheld()).contains(Judged.Reason.TOO_FEW));
    }

    /** A division of 0.1 alone has a standard deviation of 0.1 / sqrt(12) = 0.0289. */
    @Test
    void equalValuesStandOnTheDivisionOrHaveNoLimits() {
        List<double[]> equal = singles(0.4, 0.4, 0.4);
        PhasedChart onDivision = PhasedChart.of(
                equal, List.of(), Kind.MEANS, 0, ALL, ChartTerms.usual().withDivision(0.1));
        assertThat(limited(onDivision, 0).isSigmaOfDivision()).isTrue();
        assertThat(limited(onDivision, 0).sigma()).isCloseTo(0.028868, offset(1e-6));
        assertThat(individuals(equal, List.of(), ALL).phases().get(0).chart().whyWithheld())
                .contains(Judged.Reason.NO_SPREAD);
    }

    /** Five and five on one side are ten in a row, and none when the meter was calibrated in between. */
    @Test
    void aRunNeverReachesOverABreak() {
        List<double[]> values = singles(1, 2, 1, 2, 11, 12, 11, 12, 11, 12, 11, 12, 11, 12);
        ChartTerms terms = ChartTerms.usual().withRules(EnumSet.of(RunRule.NINE_ON_ONE_SIDE));
        Base base = new Base(0, 4, true);
        PhasedChart whole = PhasedChart.of(values, List.of(), Kind.MEANS, 0, base, terms);
        PhasedChart broken = PhasedChart.of(values, List.of(9), Kind.MEANS, 0, base, terms);
        assertThat(limited(whole, 0).level().get(12).signals()).containsExactly(RunRule.NINE_ON_ONE_SIDE);
        assertThat(broken.phases())
                .allSatisfy(phase -> assertThat(
                                phase.chart().meaningful().orElseThrow().level())
                        .allSatisfy(point -> assertThat(point.signals()).isEmpty()));
    }

    /** Averages: 5.6 + 0.2 (10 - 5.6) = 6.48. Sums: 10 - 5.6 - 0.5 sigma. Neither remembers the phase before. */
    @Test
    void averagesAndSumsBeginAnewInEachPhase() {
        PhasedChart averages = PhasedChart.of(BROKEN, List.of(3), Kind.EWMA, 0.2, ALL, ChartTerms.usual());
        assertThat(limited(averages, 1).level().get(0).value()).isCloseTo(6.48, offset(1e-12));
        assertThat(limited(averages, 1).spread()).isEmpty();
        PhasedChart sums = PhasedChart.of(
                BROKEN, List.of(3), Kind.CUSUM, 0.5, ALL, ChartTerms.usual().withWidth(5));
        double sigma = 5.0 / 3 / PAIR;
        assertThat(limited(sums, 1).level().get(0).value()).isCloseTo(4.4 - 0.5 * sigma, offset(1e-12));
        assertThat(limited(sums, 1).level().get(0).high()).isCloseTo(5 * sigma, offset(1e-12));
        assertThat(limited(sums, 0).level().get(0).value()).isCloseTo(-(4.6 - 0.5 * sigma), offset(1e-12));
    }

    /** Sums of 1 and -1 within an interval of 1 sigma; the fourth of equal deviations passes it. */
    @Test
    void aSumBeyondItsIntervalIsASignal() {
        PhasedChart sums = PhasedChart.of(
                singles(0, 1, 0, 1, 3, 3, 3),
                List.of(),
                Kind.CUSUM,
                0.5,
                new Base(0, 4, true),
                ChartTerms.usual().withWidth(5));
        // Centre 0.5, sigma 1 / d2 = 0.886; each 3 adds 2.5 - 0.443 = 2.057, and two of them pass 4.431 with what was
        // left.
        assertThat(limited(sums, 0).level())
                .extracting(point -> point.signals().isEmpty())
                .containsExactly(true, true, true, true, true, true, false);
    }

    /**
     * Means 2, 3 and 7, moving ranges 1 and 4: 2.5 / d2 = 2.2156, squared 4.9087. Within, the squares are 2, 2 and 8 over 3:
     * variance 4, of a mean of two 2. Between is sqrt(2.9087) = 1.7055, of a mean together sqrt(4.9087) again.
     */
    @Test
    void theMeansOfDeterminationsSpreadByWhatTheyDiffer() {
        List<double[]> groups = List.of(new double[] {1, 3}, new double[] {2, 4}, new double[] {5, 9});
        for (Kind kind : List.of(Kind.MEANS, Kind.MEAN_RANGE, Kind.MEAN_DEVIATION)) {
            Limited limited = limited(PhasedChart.of(groups, List.of(), kind, 0, ALL, ChartTerms.usual()), 0);
            assertThat(limited.centre()).isCloseTo(4, offset(1e-12));
            assertThat(limited.spreads().within()).isCloseTo(2, offset(1e-12));
            assertThat(limited.spreads().between()).isCloseTo(1.7055, offset(1e-4));
            assertThat(limited.sigma()).isCloseTo(2.2156, offset(1e-4));
            assertThat(limited.level().get(2).value()).isEqualTo(7);
            assertThat(limited.level().get(2).high()).isCloseTo(4 + 3 * 2.2156, offset(3e-4));
        }
        PhasedChart ranges = PhasedChart.of(groups, List.of(), Kind.MEAN_RANGE, 0, ALL, ChartTerms.usual());
        assertThat(limited(ranges, 0).spread().get(2).value()).isEqualTo(4);
        assertThat(limited(ranges, 0).spread().get(2).centre()).isCloseTo(2 * PAIR, offset(1e-9));
        PhasedChart deviations = PhasedChart.of(groups, List.of(), Kind.MEAN_DEVIATION, 0, ALL, ChartTerms.usual());
        assertThat(limited(deviations, 0).spread().get(2).centre()).isCloseTo(2 * Math.sqrt(2 / Math.PI), offset(1e-9));
    }

    /** Means 2 and 2 do not differ, but their trials do: variance 2, of a mean of two 1. */
    @Test
    void meansSpreadNoLessThanTheirTrialsWithin() {
        List<double[]> groups = List.of(new double[] {1, 3}, new double[] {1, 3});
        Limited limited = limited(PhasedChart.of(groups, List.of(), Kind.MEANS, 0, ALL, ChartTerms.usual()), 0);
        assertThat(limited.spreads().between()).isZero();
        assertThat(limited.sigma()).isCloseTo(1, offset(1e-12));
    }

    /** Of unequal sizes: with between 0 and variance 2 within, limits of a mean of one are 3 sqrt(2) out, of two 3. */
    @Test
    void aMeanOfFewerTrialsHasWiderLimits() {
        List<double[]> groups = List.of(new double[] {1, 3}, new double[] {1, 3}, new double[] {2});
        Limited limited =
                limited(PhasedChart.of(groups, List.of(), Kind.MEANS, 0, new Base(0, 2, true), ChartTerms.usual()), 0);
        assertThat(limited.level().get(1).high()).isCloseTo(5, offset(1e-12));
        assertThat(limited.level().get(2).high()).isCloseTo(2 + 3 * Math.sqrt(2), offset(1e-12));
    }

    /** Eight of 0.4, then 0.5: one division, and no chart signals; 0.6 is two, and the chart of values does. */
    @Test
    void aDifferenceOfOneDivisionIsNeverASignal() {
        Base eight = new Base(0, 8, true);
        List<double[]> oneUp =
                singles(0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5);
        List<double[]> twoUp = singles(0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.6);
        ChartTerms terms = ChartTerms.usual().withDivision(0.1).withRules(EnumSet.allOf(RunRule.class));
        for (Kind kind : List.of(Kind.MEANS, Kind.EWMA, Kind.CUSUM)) {
            PhasedChart chart = PhasedChart.of(oneUp, List.of(), kind, 0.2, eight, terms);
            assertThat(chart.signalling()).as("%s", kind).doesNotContain(true);
        }
        PhasedChart chart = PhasedChart.of(twoUp, List.of(), Kind.MEANS, 0.2, eight, terms);
        assertThat(chart.signalling()[8]).isTrue();
        assertThat(limited(chart, 0).level().get(8).high()).isCloseTo(0.5, offset(1e-12));
    }

    /**
     * Two determinations, 1 3 and 5 7: means 2 and 6, moving range 4 / d2, squared 4 pi = 12.566; variance within 2, of a mean
     * of two 1. A single trial spreads by sqrt(11.566 + 2) = 3.683, and the step from 3 to 5 is no moving range.
     */
    @Test
    void singleTrialsHaveLimitsWidenedByWhatDeterminationsDiffer() {
        PhasedChart chart = PhasedChart.ofTrials(
                new double[] {1, 3, 5, 7}, List.of(0, 0, 1, 1), List.of(), ALL, ChartTerms.usual());
        Limited limited = limited(chart, 0);
        assertThat(limited.spreads().isBetweenKnown()).isTrue();
        assertThat(limited.sigma()).isCloseTo(3.683, offset(1e-3));
        assertThat(limited.level().get(0).high()).isCloseTo(4 + 3 * 3.683, offset(3e-3));
        assertThat(limited.spread()).extracting(ChartPoint::index).containsExactly(1, 3);
        assertThat(limited.spread().get(0).centre()).isCloseTo(Math.sqrt(2) * PAIR, offset(1e-9));
    }

    /** 1 3 of one determination: the mean 2, variance 2, and nothing is known of another determination. */
    @Test
    void trialsOfOneDeterminationHaveLimitsWithinIt() {
        Limited limited = limited(
                PhasedChart.ofTrials(new double[] {1, 3}, List.of(4, 4), List.of(), ALL, ChartTerms.usual()), 0);
        assertThat(limited.spreads().isBetweenKnown()).isFalse();
        assertThat(limited.sigma()).isCloseTo(Math.sqrt(2), offset(1e-12));
        assertThat(PhasedChart.ofTrials(new double[] {1}, List.of(4), List.of(), ALL, ChartTerms.usual())
                        .phases()
                        .get(0)
                        .chart()
                        .whyWithheld())
                .contains(Judged.Reason.TOO_FEW);
    }

    @Test
    void refusesWhatCannotBeCharted() {
        ChartTerms terms = ChartTerms.usual();
        List<double[]> single = singles(1);
        assertThatThrownBy(() -> PhasedChart.of(List.of(), List.of(), Kind.EWMA, 0.2, ALL, terms))
                .hasMessage("count of groups must be at least 1, but is 0");
        assertThatThrownBy(() -> PhasedChart.of(single, List.of(), Kind.MEAN_RANGE, 0, ALL, terms))
                .hasMessage("count of values in a group must be at least 2, but is 1");
        assertThatThrownBy(() -> PhasedChart.of(single, List.of(), Kind.TRIALS, 0, ALL, terms))
                .hasMessage("kind must be of determinations, but is TRIALS");
        assertThatThrownBy(() -> PhasedChart.ofTrials(new double[] {1, 2}, List.of(1), List.of(), ALL, terms))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PhasedChart.ofTrials(new double[0], List.of(), List.of(), ALL, terms))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> individuals(BROKEN, List.of(3, 3), ALL)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> individuals(BROKEN, List.of(5), ALL)).isInstanceOf(IllegalArgumentException.class);
    }
}
