package porebench.statistics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BeforeAndAfterTest {
    private static final double TENTH = 0.1;
    private static final double MARGIN = 0.05;

    private static ReadingSets one(double... readings) {
        return ReadingSets.of(List.of(readings));
    }

    private static ReadingSets several(double[]... sets) {
        return ReadingSets.of(Arrays.asList(sets));
    }

    private static BeforeAndAfter compared(ReadingSets before, ReadingSets after) {
        return BeforeAndAfter.of(before, after, TENTH, false, Optional.empty());
    }

    /**
     * By pencil: both sides stand still, so that s is 0.1 / sqrt(12) and either side adds the variance of one rounding, 0.01 / 12:
     * (2 / 3 + 2) 0.01 / 12 = 0.00222222, its root 0.0471405; degrees of freedom (8 / 3)^2 / (2 (1 / 3)^2 / 2) = 64.
     */
    @Test
    void readingsThatStandStillHaveTheUncertaintyOfTheDivision() {
        BeforeAndAfter found = compared(one(0.4, 0.4, 0.4), one(0.4, 0.4, 0.4));
        assertThat(found.isOfDivision()).isTrue();
        assertThat(found.standardError()).isCloseTo(0.04714045, within(1e-8));
        assertThat(found.degreesOfFreedom()).isCloseTo(64, within(1e-9));
        assertThat(found.p()).isEqualTo(1);
        assertThat(found.verdict(MARGIN)).isEqualTo(ComparisonVerdict.TEST_MORE);
        assertThat(found.plan(MARGIN, OptionalDouble.empty()).onEachSide()).isEmpty();
        assertThat(found.verdict(0.1)).isEqualTo(ComparisonVerdict.KEEP);
    }

    /**
     * By pencil: after has variance 0.003, 0.003 / 5 = 0.0006, before that of the division twice, 0.01 / 12 / 5 + 0.01 / 12 = 0.001;
     * 0.0016, its root 0.04.
     */
    @Test
    void aSideThatStandsStillBesideOneThatScattersHasItsRounding() {
        BeforeAndAfter found = compared(one(0.4, 0.4, 0.4, 0.4, 0.4), one(0.5, 0.6, 0.5, 0.6, 0.5));
        assertThat(found.isOfDivision()).isTrue();
        assertThat(found.standardError()).isCloseTo(0.04, within(1e-12));
        assertThat(found.difference()).isCloseTo(0.14, within(1e-12));
        assertThat(found.verdict(MARGIN)).isEqualTo(ComparisonVerdict.REPLACE);
    }

    /** By pencil: a reading of Type A is the difference of two, so that s^2 is 0.01 / 6, and the rounding as much again on each side. */
    @Test
    void aDifferenceOfTwoReadingsIsRoundedTwice() {
        BeforeAndAfter found = BeforeAndAfter.of(one(0.4, 0.4), one(0.4, 0.4), TENTH, true, Optional.empty());
        assertThat(found.standardError()).isCloseTo(Math.sqrt(2 * 0.01 / 6 * 1.5), within(1e-12));
    }

    /** By pencil: 0.0025 / 2 + 0.0025 / 2 = 0.0025; between determinations 2 x 0.04^2 = 0.0032; the root of 0.0057 is 0.0754983. */
    @Test
    void whatDeterminationsDifferByIsAddedWhereItIsKnown() {
        ReadingSets before = one(0.4, 0.4 + 0.05 * Math.sqrt(2));
        ReadingSets after = one(0.6, 0.6 + 0.05 * Math.sqrt(2));
        BeforeAndAfter alone = BeforeAndAfter.of(before, after, 0.001, false, Optional.empty());
        BeforeAndAfter known = BeforeAndAfter.of(before, after, 0.001, false, Optional.of(new BetweenSets(0.04, 10)));
        assertThat(alone.unit()).isEqualTo(BeforeAndAfter.Unit.READINGS);
        assertThat(alone.standardError()).isCloseTo(0.05, within(1e-9));
        assertThat(known.unit()).isEqualTo(BeforeAndAfter.Unit.READINGS_WITH_LABORATORY);
        assertThat(known.standardError()).isCloseTo(0.0754983, within(1e-7));
        // 0.0057^2 / (2 x 0.00125^2 / 1 + 0.0032^2 / 10)
        assertThat(known.degreesOfFreedom())
                .isCloseTo(0.0057 * 0.0057 / (2 * 0.00125 * 0.00125 + 1.024e-6), within(1e-6));
    }

    /** By pencil: means 0.4, 0.5, 0.6, s 0.1; the other side's only mean is taken to differ as much: s^2 (1 + 1 / 3) = 0.0133333. */
    @Test
    void anOnlyDeterminationIsTakenToDifferAsTheOthersDo() {
        ReadingSets three = several(new double[] {0.38, 0.42}, new double[] {0.48, 0.52}, new double[] {0.58, 0.62});
        BeforeAndAfter found = BeforeAndAfter.of(three, one(0.68, 0.72), 0.001, false, Optional.empty());
        assertThat(found.unit()).isEqualTo(BeforeAndAfter.Unit.DETERMINATIONS_OF_ONE_SIDE);
        assertThat(found.standardError()).isCloseTo(Math.sqrt(0.04 / 3), within(1e-9));
        assertThat(found.degreesOfFreedom()).isCloseTo(2, within(1e-9));
        BeforeAndAfter turned = BeforeAndAfter.of(one(0.68, 0.72), three, 0.001, false, Optional.empty());
        assertThat(turned.difference()).isCloseTo(-found.difference(), within(1e-12));
        assertThat(turned.halfWidth()).isCloseTo(found.halfWidth(), within(1e-12));
    }

    /** A single determination of fewer trials differs by more: by s^2 (1 - 1 / 2) of its own trials, here 0.0008 / 2. */
    @Test
    void fewerTrialsMakeAnOnlyDeterminationLessSure() {
        ReadingSets three =
                several(new double[] {0.38, 0.42, 0.38, 0.42}, new double[] {0.48, 0.52, 0.48, 0.52}, new double[] {
                    0.58, 0.62, 0.58, 0.62
                });
        BeforeAndAfter found = BeforeAndAfter.of(three, one(0.68, 0.72), 0.001, false, Optional.empty());
        double more = 0.0008 * (0.5 - 0.25);
        assertThat(found.standardError()).isCloseTo(Math.sqrt(0.01 + more + 0.01 / 3), within(1e-9));
    }

    @Test
    void severalDeterminationsThatAgreeAreNotTakenForPerfect() {
        BeforeAndAfter found = compared(
                several(new double[] {0.4, 0.4}, new double[] {0.4, 0.4}),
                several(new double[] {0.5, 0.5}, new double[] {0.5, 0.5}));
        // (1 / 2 + 1) 0.01 / 12 a side, as a determination that stands still has one rounding.
        assertThat(found.standardError()).isCloseTo(0.05, within(1e-12));
    }

    @Test
    void theVerdictFollowsItsRule() {
        double[] still = {0.401, 0.399, 0.402, 0.398, 0.400};
        assertThat(verdict(still, 0)).isEqualTo(ComparisonVerdict.KEEP);
        assertThat(verdict(still, 0.02)).isEqualTo(ComparisonVerdict.KEEP);
        // The interval leaves out 0, but the difference is no larger than the margin, nor shown to be smaller.
        assertThat(verdict(still, 0.0495)).isEqualTo(ComparisonVerdict.TEST_MORE);
        assertThat(verdict(still, 0.0505)).isEqualTo(ComparisonVerdict.REPLACE);
        assertThat(verdict(still, -0.0505)).isEqualTo(ComparisonVerdict.REPLACE);
        double[] wild = {0.2, 0.6, 0.4};
        assertThat(verdict(wild, 0.2)).isEqualTo(ComparisonVerdict.TEST_MORE);
    }

    private static ComparisonVerdict verdict(double[] readings, double shift) {
        return BeforeAndAfter.of(
                        one(readings),
                        one(Arrays.stream(readings).map(x -> x + shift).toArray()),
                        0.001,
                        false,
                        Optional.empty())
                .verdict(MARGIN);
    }

    @Test
    void everythingTurnsWithTheSides() {
        ReadingSets before = one(0.42, 0.38, 0.45, 0.40);
        ReadingSets after = one(0.47, 0.52, 0.44);
        BeforeAndAfter there = BeforeAndAfter.of(before, after, 0.01, false, Optional.empty());
        BeforeAndAfter back = BeforeAndAfter.of(after, before, 0.01, false, Optional.empty());
        assertThat(back.t()).isEqualTo(-there.t());
        assertThat(back.p()).isEqualTo(there.p());
        assertThat(back.equivalence(MARGIN).pLow())
                .isCloseTo(there.equivalence(MARGIN).pHigh(), within(1e-12));
    }

    @Test
    void aSingleReadingIsNoSide() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> compared(one(0.4), one(0.4, 0.5)))
                .withMessage("count of readings before must be at least 2, but is 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> compared(one(0.4, 0.5), one(0.4)))
                .withMessage("count of readings after must be at least 2, but is 1");
    }
}
