package porebench.evidence.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import porebench.method.hold.AirPair;
import porebench.method.hold.Hold;
import porebench.method.hold.HoldShift;

/** What is said of pairs, word for word; the shift is worked in HoldHandTest. */
class HoldTextTest {
    private static final HoldText TEXT = HoldText.in(Locale.ENGLISH);

    private static Hold hold(double... differences) {
        List<AirPair> pairs = new ArrayList<>();
        for (double difference : differences) {
            pairs.add(new AirPair("R-" + (pairs.size() + 1), 5 + difference, 5));
        }
        return Hold.of(pairs, 0.05);
    }

    @Test
    void saysEveryVerdict() {
        assertThat(TEXT.say(hold(PairsBench.SHIFTED)))
                .startsWith(
                        "Recheck G: air by the meter less air by density has changed by 5.50 % air (95 % interval 4.23 to"
                                + " 6.77) since R-9.");
        assertThat(TEXT.say(hold(0, 0, 0, 0, 0, 0, 0, 0))).isEqualTo("No lasting shift in 8 pairs: G holds so far.");
        assertThat(TEXT.say(hold(0))).isEqualTo("Pairs charted: 1; nothing is said from fewer than 8.");
        assertThat(TEXT.say(hold(PairsBench.QUIET)))
                .isEqualTo("No lasting shift in 14 pairs, but they scatter too much to show half a step of G.");
    }

    @Test
    void saysWhatThatRestsOn() {
        assertThat(TEXT.reasons(hold(PairsBench.QUIET)))
                .satisfiesExactly(
                        alarm -> assertThat(alarm)
                                .startsWith("About once in 486 pairs chance alone gives a signal; more often where"),
                        tellable -> assertThat(tellable)
                                .contains("is seen in about 20 pairs; one of half a step, 0.05 % air, in about "));
        assertThat(TEXT.reasons(hold(0)).get(1))
                .isEqualTo("Two pairs at least are needed before anything can be compared.");
        assertThat(HoldText.in(Locale.forLanguageTag("es-ES")).say(hold(PairsBench.SHIFTED)))
                .contains("ha cambiado 5,50 % de aire");
    }

    /** Where a shift is below the scatter its interval promises less than it says, as the simulation in docs/variability.md shows. */
    @Test
    void aShiftBelowTheScatterSaysThatItIsLikelyOverstated() {
        Hold large = hold(PairsBench.SHIFTED);
        assertThat(TEXT.reasons(large)).noneMatch(reason -> reason.contains("overstated"));
        Hold small = new Hold(
                large.points(), OptionalDouble.of(0.4), 0.05, Optional.of(new HoldShift(-0.39, -0.6, -0.1, 3)));
        assertThat(TEXT.reasons(small)).last().asString().contains("scatter, 0.40 % air", "overstated");
        Hold wide =
                new Hold(large.points(), OptionalDouble.of(0.4), 0.05, Optional.of(new HoldShift(-0.4, -0.6, -0.1, 3)));
        assertThat(TEXT.reasons(wide)).noneMatch(reason -> reason.contains("overstated"));
    }

    @Test
    void everyTextIsSaid() {
        assertThat(ResourceBundle.getBundle("porebench.evidence.hold.hold", Locale.ROOT)
                        .keySet())
                .containsExactlyInAnyOrder(
                        "verdict.recheck",
                        "verdict.holds-so-far",
                        "verdict.too-few",
                        "verdict.cannot-tell",
                        "reason.false-alarm",
                        "reason.tellable",
                        "reason.nothing-told",
                        "reason.small-shift");
    }
}
