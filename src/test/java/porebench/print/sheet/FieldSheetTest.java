package porebench.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardText;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.FieldSheet;
import porebench.method.Problem;
import porebench.port.OutputRefused;
import porebench.port.Paper;
import porebench.print.Cards;
import porebench.print.Presses;
import porebench.print.SievedCards;
import porebench.print.code.CodePicture;
import porebench.print.page.Words;

/** The sheet of a crew: what stands on it, and that its code says the card's whole text. */
class FieldSheetTest {
    private static String text(FactorCard card, Locale locale) {
        return Presses.text(new FieldSheet(card), Paper.A4, locale);
    }

    @Test
    void theFactorStandsAboveAndInEachRow() {
        String text = text(Cards.usual(), Locale.ENGLISH);
        assertThat(text).contains("TW-214", "SUBTRACT G = 0.3", "2026-11-25", "2027-11-24", "readings 4.8 to 7.8");
        assertThat(text.split("\u2212 0\\.3", -1)).hasSize(17);
        String last = CardText.of(Cards.usual(), Words.in(Locale.ENGLISH).card())
                .lines()
                .reduce((a, b) -> b)
                .orElseThrow();
        assertThat(text).contains(last);
        assertThat(text(Cards.usual(), Locale.forLanguageTag("es"))).contains("Hoja de campo", "Menos G", "0,3");
    }

    @Test
    void aNegativeFactorIsTakenInBrackets() {
        assertThat(text(Cards.card("-0.2", "6.0", "1.5", "0.1", "10"), Locale.ENGLISH))
                .contains("\u2212 (\u22120.2)", "to subtract it is to add 0.2");
    }

    @Test
    void aMarkedSheetHasNoFactorInItsRows() {
        String text = text(Cards.in(CardState.LAPSED, Cards.usual()), Locale.ENGLISH);
        assertThat(text).contains("LAPSED").doesNotContain("SUBTRACT", "\u2212 0.3");
    }

    /** By conditions a crew works: a lorry instead of a word is not printed as a box. */
    @Test
    void charactersThatTheTypefaceLacksAreRefusedOrSaid() {
        FactorCard card = Cards.under(Cards.usual(), "Only by \uD83D\uDE9A");
        assertThatThrownBy(() -> text(card, Locale.ENGLISH))
                .isInstanceOfSatisfying(
                        OutputRefused.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::code)
                                .containsExactly("card.conditions-not-shown"));
        assertThat(text(Cards.named("Lab", "M-1", "\u4e2d", "pit", 1), Locale.ENGLISH))
                .contains("stands for a character");
    }

    @Test
    void aWetSievedConcreteHasTheAirOfItsFullMixture() {
        assertThat(text(SievedCards.spread(Cards.card("0.3", "6.0", "1.5", "0.1", "10")), Locale.ENGLISH))
                .contains("At reading 4.8: full mixture 4.1 %, mortar 6.6 %.");
    }

    @Test
    void theCodeHoldsTheWholeTextOfTheCard() {
        for (FactorCard card : new FactorCard[] {Cards.usual(), Cards.everythingLong("-0.35", true)}) {
            for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.forLanguageTag("es")}) {
                assertThat(CodePicture.texts(Presses.PRESS
                                .preview(new FieldSheet(card), Paper.A4, locale, 200)
                                .get(0)))
                        .containsExactly(CardText.of(card, Words.in(locale).card()));
            }
        }
    }
}
