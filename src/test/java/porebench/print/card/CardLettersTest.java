package porebench.print.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.evidence.paper.FactorCard;
import porebench.method.Problem;
import porebench.port.OutputRefused;
import porebench.port.Paper;
import porebench.print.Cards;
import porebench.print.Presses;

/** Cards whose words have characters that the typeface lacks: what a crew works by is refused, other names say that some are missing. */
class CardLettersTest {
    private static final String LORRY = "\uD83D\uDE9A";

    @ParameterizedTest
    @EnumSource(
            value = Paper.class,
            names = {"A6", "CARD_4X6", "HALF_LETTER", "WALLET"})
    void aPictureInTheConditionsIsNoCard(Paper paper) {
        FactorCard card = Cards.under(Cards.usual(), "Only for " + LORRY + " pumped, " + LORRY + " not \u4e2d placed");
        assertThatThrownBy(() -> Presses.pdf(card, paper, Locale.ENGLISH))
                .isInstanceOfSatisfying(
                        OutputRefused.class,
                        refused -> assertThat(refused.problems())
                                .containsExactly(Problem.error(
                                        "conditions",
                                        "card.conditions-not-shown",
                                        "TW-214",
                                        LORRY + " (U+1F69A), \u4e2d (U+4E2D)")));
    }

    @Test
    void neitherIsOneInTheNameOfTheMix() {
        FactorCard card = Cards.named("Lab", "M-" + LORRY, "title", "pit", 1);
        assertThatThrownBy(() -> Presses.pdf(card, Paper.A6, Locale.ENGLISH))
                .isInstanceOfSatisfying(
                        OutputRefused.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::code)
                                .containsExactly("card.mix-not-shown"));
    }

    /** Accents that are typed apart, spaces and marks of direction are no characters that a typeface lacks. */
    @Test
    void whatIsComposedOrNotSeenIsNotLacking() throws Exception {
        FactorCard card = Cards.under(Cards.usual(), "Mu\u0308hle,\u00a0\u200eCa\u0303o \u2014 \u00b1 2 \u00b0C");
        assertThat(Presses.text(card, Paper.A6, Locale.ENGLISH))
                .contains("M\u00fchle, C\u00e3o \u2014 \u00b1 2 \u00b0C")
                .doesNotContain("lacks");
    }

    @ParameterizedTest
    @EnumSource(
            value = Paper.class,
            names = {"A6", "CARD_4X6", "HALF_LETTER", "WALLET"})
    void aNameSaysThatItsCharacterIsMissing(Paper paper) throws Exception {
        FactorCard card = Cards.named("Lab", "M-1", "title " + LORRY, "pit", 1);
        assertThat(Presses.text(card, paper, Locale.GERMAN).replaceAll("\\s+", " "))
                .contains("\uFFFD steht f\u00fcr ein Zeichen");
    }
}
