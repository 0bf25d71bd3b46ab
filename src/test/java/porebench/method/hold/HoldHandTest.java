package porebench.method.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.quantity.Density;

class HoldHandTest {
    private static Hold hold(double halfStep, double... differences) {
        List<AirPair> pairs = new ArrayList<>();
        for (double difference : differences) {
            pairs.add(new AirPair("R-" + (pairs.size() + 1), 5 + difference, 5));
        }
        return Hold.of(pairs, halfStep);
    }

    /** 100 (2500 - 2350) / 2500 = 6; the meter's 6.4 is 0.4 more. */
    @Test
    void airByDensity() {
        AirPair pair = AirPair.of("R-1", 6.4, new Density(2500), new Density(2350));
        assertThat(pair.gravimetricPercent()).isCloseTo(6, within(1e-12));
        assertThat(pair.difference()).isCloseTo(0.4, within(1e-12));
        assertThat(pair.isDoubted()).isFalse();
        assertThatThrownBy(() -> AirPair.of("R", 6, new Density(0), new Density(2350)))
                .hasMessageContaining("airFree");
        assertThatThrownBy(() -> AirPair.of("R", 6, new Density(2500), new Density(0)))
                .hasMessageContaining("measured");
    }

    /**
     * 0, 2 have mean 1 and s = sqrt 2. The third, 1 + sqrt 3, is off by sqrt 3 = t sqrt(2) sqrt(3/2): t = 1 with one
     * degree of freedom, a tail of 1/4 (arctangent), whose normal deviate is 0.67449. Sum 0.67449 - 0.5, average a fifth.
     */
    @Test
    void theThirdPairIsScoredAgainstTheFirstTwo() {
        Hold hold = hold(0.001, 0, 2, 1 + Math.sqrt(3));
        HoldPoint third = hold.points().get(2);
        assertThat(hold.points().get(1).score()).isEmpty();
        assertThat(third.score().orElseThrow()).isCloseTo(0.6744898, within(1e-6));
        assertThat(third.high()).isCloseTo(0.1744898, within(1e-6));
        assertThat(third.low()).isZero();
        assertThat(third.average()).isCloseTo(0.1348980, within(1e-6));
        assertThat(third.isFarOut()).isFalse();
        assertThat(hold.verdict()).isEqualTo(HoldVerdict.TOO_FEW);
    }

    /** 1 and 0 by turns, eight times, then 5.5 and 6.5 by turns: the means differ by 5.5; all far out at first. */
    @Test
    void aLastingShiftAsksForARecheckAndSaysHowMuch() {
        Hold up = hold(0.05, 1, 0, 1, 0, 1, 0, 1, 0, 5.5, 6.5, 5.5, 6.5, 5.5, 6.5);
        assertThat(up.verdict()).isEqualTo(HoldVerdict.RECHECK);
        HoldShift shift = up.shift().orElseThrow();
        assertThat(shift.from()).isEqualTo(8);
        assertThat(shift.percent()).isCloseTo(5.5, within(1e-12));
        // s2 = (8 x 0.25 + 6 x 0.25) / 12 = 0.2916667; error 0.5400617 sqrt(1/8 + 1/6) = 0.2916667; t(12) = 2.178813,
        // twice.
        assertThat(shift.low()).isCloseTo(5.5 - 1.2709742, within(1e-6));
        assertThat(shift.high()).isCloseTo(5.5 + 1.2709742, within(1e-6));
        Hold down = hold(0.05, -1, 0, -1, 0, -1, 0, -1, 0, -5.5, -6.5, -5.5, -6.5, -5.5, -6.5);
        assertThat(down.shift().orElseThrow().percent()).isCloseTo(-5.5, within(1e-12));
        assertThat(down.shift().orElseThrow().from()).isEqualTo(8);
        assertThat(down.signals()).isNotEmpty().allMatch(point -> point.larger() < 0);
        assertThat(up.signals().get(0).pair().name()).isEqualTo("R-11");
    }

    /** Below -2 % the density is wrong: the pair changes nothing. */
    @Test
    void aDoubtedDensityIsLeftOut() {
        AirPair doubted = new AirPair("R-9", 5, -2.1);
        assertThat(doubted.isDoubted()).isTrue();
        assertThat(new AirPair("R-9", 5, -2).isDoubted()).isFalse();
        List<AirPair> pairs = List.of(new AirPair("R-1", 5, 5), doubted, new AirPair("R-2", 6, 5));
        Hold hold = Hold.of(pairs, 0.05);
        assertThat(hold.charted()).isEqualTo(2);
        assertThat(hold.points().get(1).score()).isEmpty();
        assertThat(hold.spread().orElseThrow()).isCloseTo(Math.sqrt(0.5), within(1e-12));
    }

    /** With s = 0.5 half a step is a tenth of s: hundreds of pairs. With s of one step, 0.1 / sqrt 12, it is 1.7 s. */
    @Test
    void saysWhenTheScatterIsTooLargeForHalfAStep() {
        Hold wide = hold(0.05, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1);
        assertThat(wide.verdict()).isEqualTo(HoldVerdict.CANNOT_TELL);
        assertThat(wide.pairsForHalfStep().orElseThrow()).isGreaterThan(300);
        Hold still = hold(0.05, 0, 0, 0, 0, 0, 0, 0, 0);
        assertThat(still.spread().orElseThrow()).isCloseTo(0.1 / Math.sqrt(12), within(1e-12));
        assertThat(still.pairsForHalfStep().orElseThrow()).isBetween(4.0, 6.0);
        assertThat(still.verdict()).isEqualTo(HoldVerdict.HOLDS_SO_FAR);
        assertThat(still.tellable().orElseThrow()).isBetween(0.6 * 0.028868, 0.8 * 0.028868);
    }

    /** Eight of 0 and 1 by turns have s = 0.53; t(7) at the limit is about 4.5, so the ninth counts 3 or so, not 1e9. */
    @Test
    void aPairFarOutCountsAtTheLimitInTheScatterToo() {
        Hold hold = hold(0.05, 0, 1, 0, 1, 0, 1, 0, 1, 1e9);
        assertThat(hold.points().get(8).isFarOut()).isTrue();
        assertThat(hold.spread().orElseThrow()).isBetween(0.6, 1.5);
    }

    @Test
    void nothingIsSaidOfOnePairOrNone() {
        assertThat(hold(0.05).verdict()).isEqualTo(HoldVerdict.TOO_FEW);
        assertThat(hold(0.05, 1).spread()).isEmpty();
        assertThat(hold(0.05, 1).tellable()).isEmpty();
        assertThat(hold(0.05, 1).pairsForHalfStep()).isEmpty();
        assertThatThrownBy(() -> hold(0)).hasMessageContaining("halfStep");
    }

    /**
     * 0 and 1 by turns twelve times, then 4, 3, 5, 3, 4, 5. Before the first 4 the means are 0.5 and 4 and part by 3.5 sqrt(12 x 6 / 18) =
     * 7; a pair earlier, 5/11 and 25/7, by 3.117 sqrt(77 / 18) = 6.45; a pair later, 10/13 and 20/5, by 3.231 sqrt(65 / 18) = 6.14.
     */
    @Test
    void theChangeIsPutWhereTheMeansPartTheMost() {
        Hold hold = hold(0.05, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 4, 3, 5, 3, 4, 5);
        HoldShift shift = hold.shift().orElseThrow();
        assertThat(shift.from()).isEqualTo(12);
        assertThat(shift.percent()).isCloseTo(3.5, within(1e-12));
        // Of three pairs, the doubted one among them, the index counts all and the means none of it.
        List<AirPair> pairs =
                new ArrayList<>(hold.points().stream().map(HoldPoint::pair).toList());
        pairs.add(3, new AirPair("odd", 5, -40));
        HoldShift beside = Hold.of(pairs, 0.05).shift().orElseThrow();
        assertThat(beside.from()).isEqualTo(13);
        assertThat(beside.percent()).isCloseTo(3.5, within(1e-12));
        assertThat(beside.low()).isCloseTo(shift.low(), within(1e-12));
    }

    /** Each is far beyond those before it, so that the sum is above 5 by the sixth: nothing is asked before the eighth. */
    @Test
    void nothingIsAskedBeforeTheEighthPair() {
        Hold hold = hold(0.05, 0, 1, 30, 300, 3000, 30_000, 300_000);
        assertThat(hold.points().get(6).high()).isGreaterThan(Hold.INTERVAL);
        assertThat(hold.signals()).isEmpty();
        assertThat(hold.verdict()).isEqualTo(HoldVerdict.TOO_FEW);
    }

    /** The last pair, 60, parts the means the most if it stands alone: a change has three pairs up to the signal all the same. */
    @Test
    void aChangeHasThreePairsUpToTheSignal() {
        Hold hold = hold(0.05, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 3, 3, 60);
        assertThat(hold.signals())
                .singleElement()
                .satisfies(point -> assertThat(point.pair().name()).isEqualTo("R-15"));
        assertThat(hold.shift().orElseThrow().from()).isEqualTo(12);
    }
}
