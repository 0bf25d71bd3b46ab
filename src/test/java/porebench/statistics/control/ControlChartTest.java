package porebench.statistics.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.statistics.Judged;

class ControlChartTest {
    private static final ChartTerms USUAL = ChartTerms.usual();

    private static ShewhartChart individuals(ChartTerms terms, double... values) {
        return ShewhartChart.individuals(values, terms).meaningful().orElseThrow();
    }

    private static List<double[]> singles(double... values) {
        return java.util.Arrays.stream(values)
                .mapToObj(value -> new double[] {value})
                .toList();
    }

    /** d2(2) = 2 / sqrt(pi), d3(2) = sqrt(2 - 4 / pi), c4(2) = sqrt(2 / pi), d2(3) = 3 / sqrt(pi). */
    @Test
    void hasTheClosedConstants() {
        ChartConstants pair = ChartConstants.of(2);
        assertThat(pair.d2()).isCloseTo(2 / Math.sqrt(Math.PI), offset(1e-12));
        assertThat(pair.d3()).isCloseTo(Math.sqrt(2 - 4 / Math.PI), offset(1e-12));
        assertThat(pair.c4()).isCloseTo(Math.sqrt(2 / Math.PI), offset(1e-12));
        assertThat(ChartConstants.of(3).d2()).isCloseTo(3 / Math.sqrt(Math.PI), offset(1e-12));
        assertThat(ChartConstants.of(5)).isSameAs(ChartConstants.of(5));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ChartConstants.of(1))
                .withMessageStartingWith("n must be");
    }

    /** 1 3 1 3: mean 2, moving ranges 2, so that sigma = 2 / d2 and the limits are 2 +- 6 / d2 = 2 +- 3 sqrt(pi). */
    @Test
    void agreesWithThePencilForSingleValues() {
        ShewhartChart chart = individuals(USUAL, 1, 3, 1, 3);
        assertThat(chart.centre()).isEqualTo(2);
        assertThat(chart.meanSpread()).isCloseTo(2, offset(1e-12));
        assertThat(chart.level().get(0).high()).isCloseTo(2 + 3 * Math.sqrt(Math.PI), offset(1e-10));
        assertThat(chart.spread()).extracting(ChartPoint::index).containsExactly(1, 2, 3);
        assertThat(chart.spread()).allSatisfy(point -> {
            assertThat(point.low()).isZero();
            assertThat(point.high()).isCloseTo(2 * ChartConstants.of(2).highD4(), offset(1e-10));
        });
        assertThat(chart.isSigmaOfDivision()).isFalse();
    }

    @Test
    void takesItsLimitsFromTheBaseAlone() {
        ShewhartChart short1 = individuals(USUAL, 1, 3, 1, 3);
        ShewhartChart longer = individuals(USUAL.withBaseCount(4), 1, 3, 1, 3, 50);
        assertThat(longer.centre()).isEqualTo(short1.centre());
        assertThat(longer.sigma()).isEqualTo(short1.sigma());
        assertThat(longer.level().get(4).signals()).containsExactly(RunRule.BEYOND_LIMITS);
        assertThat(longer.spread().get(3).signals()).containsExactly(RunRule.BEYOND_LIMITS);
        assertThat(longer.level().subList(0, 4))
                .allSatisfy(point -> assertThat(point.signals()).isEmpty());
    }

    /** All readings equal: three times 0.1 / sqrt(12) is 0.087, and no limit is closer than a division. */
    @Test
    void doesNotBelieveLessSpreadThanTheDivisionGives() {
        ShewhartChart chart = individuals(USUAL.withDivision(0.1).withBaseCount(4), 0.4, 0.4, 0.4, 0.4, 0.4, 0.5);
        assertThat(chart.isSigmaOfDivision()).isTrue();
        assertThat(chart.sigma()).isCloseTo(0.1 / Math.sqrt(12), offset(1e-15));
        assertThat(chart.level().get(4).signals()).isEmpty();
        assertThat(chart.level().get(4).high()).isCloseTo(0.5, offset(1e-12));
        assertThat(chart.level().get(5).signals()).as("one division").isEmpty();
        assertThat(chart.spread().get(4).signals()).as("one division").isEmpty();
        assertThat(ShewhartChart.individuals(new double[] {0.4, 0.4, 0.4}, USUAL))
                .isEqualTo(Judged.withheld(Judged.Reason.NO_SPREAD));
        assertThat(ShewhartChart.individuals(new double[] {0.4}, USUAL))
                .isEqualTo(Judged.withheld(Judged.Reason.TOO_FEW));
    }

    @Test
    void takesWhatIsKnownFromEarlier() {
        ShewhartChart chart =
                individuals(USUAL.withKnownCentre(0.5).withKnownSigma(0.2).withWidth(2), 0.4);
        assertThat(chart.level().get(0).low()).isCloseTo(0.1, offset(1e-12));
        assertThat(chart.level().get(0).high()).isCloseTo(0.9, offset(1e-12));
    }

    /** The zones are thirds of the width: with limits at 2 the second zone ends at 4/3. */
    @Test
    void dividesItsWidthIntoZones() {
        ChartTerms terms =
                USUAL.withKnownCentre(0).withKnownSigma(1).withWidth(2).withRules(EnumSet.of(RunRule.TWO_OF_THREE));
        assertThat(individuals(terms, 1.4, 1.4).level().get(1).signals()).containsExactly(RunRule.TWO_OF_THREE);
        assertThat(individuals(terms, 1.3, 1.4).level().get(1).signals()).isEmpty();
    }

    /**
     * 0 2 and 0 0 6: means 1 and 2, over all five 8 / 5; ranges 2 and 6, sigma the mean of 2 / d2(2) and 6 / d2(3) =
     * (sqrt(pi) + 2 sqrt(pi)) / 2.
     */
    @Test
    void takesEachSubgroupByItsOwnSize() {
        ShewhartChart chart = ShewhartChart.meanRange(List.of(new double[] {0, 2}, new double[] {0, 0, 6}), USUAL)
                .meaningful()
                .orElseThrow();
        double sigma = 1.5 * Math.sqrt(Math.PI);
        assertThat(chart.centre()).isCloseTo(1.6, offset(1e-12));
        assertThat(chart.sigma()).isCloseTo(sigma, offset(1e-10));
        assertThat(chart.level().get(0).high()).isCloseTo(1.6 + 3 * sigma / Math.sqrt(2), offset(1e-9));
        assertThat(chart.level().get(1).high()).isCloseTo(1.6 + 3 * sigma / Math.sqrt(3), offset(1e-9));
        assertThat(chart.spread().get(1).centre()).isCloseTo(3 / Math.sqrt(Math.PI) * sigma, offset(1e-9));
        ShewhartChart deviations = ShewhartChart.meanDeviation(
                        List.of(new double[] {0, 2}, new double[] {0, 0, 6}), USUAL)
                .meaningful()
                .orElseThrow();
        // s = sqrt 2 and sqrt 12, c4(2) = sqrt(2/pi), c4(3) = sqrt(pi)/2.
        assertThat(deviations.sigma())
                .isCloseTo((Math.sqrt(Math.PI) + Math.sqrt(12) * 2 / Math.sqrt(Math.PI)) / 2, offset(1e-10));
    }

    @Test
    void refusesSubgroupsWithoutASpread() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShewhartChart.meanRange(List.of(new double[] {1}), USUAL))
                .withMessage("count of values in a group must be at least 2, but is 1");
        assertThatIllegalArgumentException().isThrownBy(() -> ShewhartChart.meanDeviation(List.of(), USUAL));
        assertThat(ShewhartChart.meanDeviation(List.of(new double[] {1, 1}), USUAL)
                        .whyWithheld())
                .contains(Judged.Reason.NO_SPREAD);
    }

    /** With lambda 1 an average is the value itself, and the limits are those of single values. */
    @Test
    void averagesOfWeightOneAreTheValues() {
        double[] values = {1, 3, 2, 5, 4};
        EwmaChart chart = EwmaChart.of(singles(values), 1, USUAL).meaningful().orElseThrow();
        ShewhartChart same = individuals(USUAL, values);
        for (int i = 0; i < values.length; i++) {
            assertThat(chart.points().get(i).value()).isEqualTo(values[i]);
            assertThat(chart.points().get(i).high())
                    .isCloseTo(same.level().get(i).high(), offset(1e-12));
        }
    }

    /** Four equal values in a subgroup halve the standard deviation of its mean. */
    @Test
    void averagesAndSumsKnowTheSizeOfSubgroups() {
        ChartTerms terms = USUAL.withKnownCentre(0).withKnownSigma(1);
        List<double[]> fours = List.of(new double[] {2, 2, 2, 2}, new double[] {2, 2, 2, 2});
        EwmaChart chart = EwmaChart.of(fours, 0.5, terms).meaningful().orElseThrow();
        assertThat(chart.points().get(0).high()).isCloseTo(3 * 0.5 / 2, offset(1e-12));
        assertThat(chart.points().get(0).signals()).containsExactly(RunRule.BEYOND_LIMITS);
        CusumChart sums =
                CusumChart.of(fours, 0.5, terms.withWidth(4)).meaningful().orElseThrow();
        assertThat(sums.slack()).isEqualTo(0.25);
        assertThat(sums.interval()).isEqualTo(2);
        assertThat(sums.points()).extracting(CusumChart.Sums::high).containsExactly(1.75, 3.5);
        assertThat(sums.points()).extracting(CusumChart.Sums::isSignal).containsExactly(false, true);
        assertThat(EwmaChart.of(List.of(new double[] {1, 2}, new double[] {2, 3, 4}), 0.2, USUAL)
                        .meaningful())
                .isPresent();
        // Sizes 4 and 2: the mean of 1 / n is 3/8, so that a mean spreads by sqrt(3/8).
        CusumChart unequal = CusumChart.of(
                        List.of(new double[] {2, 2, 2, 2}, new double[] {2, 2}), 0.5, terms.withWidth(4))
                .meaningful()
                .orElseThrow();
        assertThat(unequal.slack()).isCloseTo(0.5 * Math.sqrt(0.375), offset(1e-12));
        assertThat(unequal.interval()).isCloseTo(4 * Math.sqrt(0.375), offset(1e-12));
    }

    @Test
    void sumsDownwardsAreDrawnWithAMinus() {
        CusumChart chart = CusumChart.of(
                        singles(-2, -2), 0.5, USUAL.withKnownCentre(0).withKnownSigma(1))
                .meaningful()
                .orElseThrow();
        assertThat(chart.points().get(1).low()).isEqualTo(3);
        assertThat(chart.points().get(1).larger()).isEqualTo(-3);
        assertThat(chart.points().get(1).isSignal())
                .as("the interval itself is no signal")
                .isFalse();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void followsTranslationScaleAndSide(long seed) {
        Random random = new Random(seed);
        double[] values = random.doubles(40).map(u -> random.nextGaussian()).toArray();
        double[] changed =
                java.util.Arrays.stream(values).map(value -> 64 - 8 * value).toArray();
        ChartTerms terms = USUAL.withRules(EnumSet.allOf(RunRule.class)).withWidth(1.5);
        ShewhartChart chart = individuals(terms, values);
        ShewhartChart other = individuals(terms, changed);
        assertThat(other.sigma()).isCloseTo(8 * chart.sigma(), offset(1e-10));
        assertThat(other.level())
                .extracting(ChartPoint::signals)
                .isEqualTo(chart.level().stream().map(ChartPoint::signals).toList());
        assertThat(chart.level())
                .anySatisfy(point -> assertThat(point.signals()).isNotEmpty());
    }

    @Test
    void rulesHaveSymbolsOfTheirOwn() {
        assertThat(Stream.of(RunRule.values()).map(RunRule::symbol)).doesNotHaveDuplicates();
        assertThat(RunRule.westernElectric()).hasSize(4);
        assertThat(RunRule.signals(new double[] {0, 4}, new double[2], RunRule.westernElectric()))
                .containsExactly(List.of(), List.of(RunRule.BEYOND_LIMITS));
    }

    /** Eight far out on one side are a run and not a mixture. */
    @Test
    void aMixtureIsOnBothSides() {
        double[] oneSided = {2, 2, 2, 2, 2, 2, 2, 2};
        assertThat(RunRule.EIGHT_BEYOND_ONE.firesAt(oneSided, 7)).isFalse();
        assertThat(RunRule.EIGHT_ON_ONE_SIDE.firesAt(oneSided, 7)).isTrue();
    }

    @Test
    void refusesTermsThatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> USUAL.withBaseCount(0));
        assertThatIllegalArgumentException().isThrownBy(() -> USUAL.withWidth(0));
        assertThatIllegalArgumentException().isThrownBy(() -> USUAL.withDivision(-0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> USUAL.withKnownSigma(0));
        assertThatIllegalArgumentException().isThrownBy(() -> EwmaChart.of(singles(1, 2), 0, USUAL));
        assertThatIllegalArgumentException().isThrownBy(() -> EwmaChart.of(singles(1, 2), 1.1, USUAL));
        assertThatIllegalArgumentException().isThrownBy(() -> CusumChart.of(singles(1, 2), -1, USUAL));
        assertThat(CusumChart.of(singles(1), 0.5, USUAL).whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(EwmaChart.of(singles(1, 1), 0.5, USUAL).whyWithheld()).contains(Judged.Reason.NO_SPREAD);
    }
}
