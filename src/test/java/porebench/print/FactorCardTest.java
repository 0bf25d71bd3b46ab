package porebench.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.evidence.CardState;
import porebench.evidence.paper.FactorCard;
import porebench.port.Paper;
import porebench.record.FactorIssue;

class FactorCardTest {
    private static String english(FactorCard card) {
        return Presses.text(card, Paper.A6, Locale.ENGLISH);
    }

    // By pencil: air 4.5 to 7.5 is 6.0 +/- 1.5; plus G 0.3 the readings are 4.8 to 7.8.
    @ParameterizedTest
    @EnumSource(
            value = Paper.class,
            names = {"A6", "CARD_4X6"})
    void saysWhatToSubtractAndWhichReadingsPass(Paper paper) {
        assertThat(Presses.text(Cards.usual(), paper, Locale.ENGLISH))
                .contains("Tarnwick Materials Laboratory", "TW-214", "Bridge deck, 35 MPa, 20 mm stone")
                .contains("Sources: Orrin Pit sand; Fell Quarry 5-20 mm")
                .contains("SUBTRACT", "0.3 % air", "G = +0.3 %")
                .contains("Load passes at readings 4.8 to 7.8", "for air of 6.0 \u00b1 1.5 %")
                .contains("one division of the gauge is 0.1 %", "ASTM C231/C231M")
                .contains("3 2026-11-25 2027-11-24 Type B")
                .contains("Reading Air Reading Air", "4.7 4.4")
                .contains("R. Alder", "M. Thorne", "Printed 2026-11-25", "Porebench 0.1.0")
                .contains("valid only for this mix, these sources and this meter type")
                .satisfies(text -> assertThat(text.replaceAll("\\s+", " "))
                        .contains("Revision 3 replaces all earlier cards of this mix"))
                .contains("shield your eyes", "petcocks", "vent", "caustic", "(45 to 55 lb)")
                .contains("Local rules and the responsible (licensed) engineer decide.")
                .doesNotContain("Wet-sieve", "negative", "One division in", "\u2026");
    }

    // Every passing reading stands in the table: 4.8, 4.9 ... 7.8 less 0.3, and two on each side.
    @Test
    void tabulatesEveryPassingReadingWithItsAir() {
        String text = english(Cards.usual());
        for (int tenths = 46; tenths <= 80; tenths++) {
            assertThat(text)
                    .containsPattern("\\b" + new BigDecimal(tenths).movePointLeft(1) + " "
                            + new BigDecimal(tenths - 3).movePointLeft(1) + "\\b");
        }
    }

    // source: AASHTO re:source newsletter, April 2015 (seen): reading 4.0, G 0.3, limits 4.0 to 6.0; air 3.7, the load
    // fails.
    @Test
    void agreesWithThePrintedUseOfAFactor() {
        FactorCard card = Cards.card("0.3", "5.0", "1.0", "0.1", "10");
        assertThat(english(card)).contains("Load passes at readings 4.3 to 6.3").contains("4.1 3.8");
        assertThat(card.window().rows().get(40).passes()).isFalse();
        assertThat(card.window().rows().get(40).air()).isEqualByComparingTo("3.7");
    }

    @Test
    void aNegativeFactorHasItsSignAndAWarning() {
        assertThat(english(Cards.card("-0.2", "6.0", "1.5", "0.1", "10")))
                .contains("\u22120.2 % air")
                .contains("G is negative: to subtract it is to add 0.2.")
                .contains("Load passes at readings 4.3 to 7.3");
    }

    @Test
    void saysSoWhenNoReadingOrOnlyOnePasses() {
        assertThat(english(Cards.card("0.3", "20", "1.0", "0.1", "10")))
                .contains("No reading passes", "for air of 20 \u00b1 1.0 %")
                .doesNotContain("Load passes");
        assertThat(english(Cards.card("0.3", "6.0", "0.01", "0.25", "10")))
                .contains("Load passes only at reading 6.25");
    }

    @Test
    void aFineDivisionIsThinnedOutAndTheCardSaysSo() {
        assertThat(english(Cards.card("0.45", "5.5", "2.0", "0.02", "12")))
                .contains("Load passes at readings 3.92 to 7.98")
                .contains("One division in 10 is shown.")
                .contains("one division of the gauge is 0.02 %")
                .contains("4.00 3.6", "7.80 7.4");
    }

    @Test
    void standingConditionsAndHoursStandOnTheCard() {
        assertThat(english(Cards.under(Cards.usual(), "only with sand Alder; not for pumped mixes")))
                .contains("Holds only: only with sand Alder; not for pumped mixes")
                .contains("2026-11-25 14:30", "2027-11-24 07:05", "Checked by", "P. Linden");
        assertThat(english(Cards.usual())).doesNotContain("Holds only", "Checked by", ":30");
    }

    /** Whoever works by the card must read every word: on the smallest card, beside everything else that is long. */
    @ParameterizedTest
    @EnumSource(
            value = Paper.class,
            names = {"A6", "CARD_4X6"})
    void theLongestConditionsAreNeverCut(Paper paper) {
        assertThat(Cards.WIDEST_CONDITIONS).hasSize(200);
        for (Locale locale : List.of(Locale.ENGLISH, Locale.forLanguageTag("es"))) {
            String text = Presses.text(
                    Cards.under(Cards.everythingLong("-0.35", true), Cards.WIDEST_CONDITIONS), paper, locale);
            assertThat(text.replaceAll("\\s+", " ")).contains(Cards.WIDEST_CONDITIONS);
        }
    }

    @Test
    void theFormulaIsNotCutWhereEverythingIsTight() {
        FactorCard card = Cards.in(CardState.EVIDENCE_CHANGED, Cards.everythingLong("0.3", true));
        assertThat(Presses.text(card, Paper.A6, Locale.forLanguageTag("es-ES")))
                .contains("G = +0,3 %")
                .doesNotContain("+0,3 %\u2026");
    }

    @Test
    void aWetSievedMixSaysToSieve() {
        assertThat(english(Cards.wetSieved(Cards.usual()))).contains("Wet-sieve the concrete over 37.5 mm (1 1/2 in.)");
    }

    @Test
    void theCardOfATypeAMeterSpeaksOfWaterColumnVentAndGlass() {
        assertThat(english(Cards.typeA(Cards.usual())))
                .contains("SUBTRACT", "from the reading h1 \u2212 h2", "Air = h1 \u2212 h2 \u2212 G; G = +0.3 %")
                .contains("one division of the water column is 0.1 %", "h1 \u2212 h2 Air", "Type A")
                .contains("glass", "by the vent")
                .doesNotContainIgnoringCase("gauge", "petcock", "chamber");
    }

    @ParameterizedTest
    @EnumSource(CardState.class)
    void onlyACardToWorkByIsWithoutItsStateAcrossIt(CardState state) {
        FactorCard card = Cards.in(state, Cards.usual());
        byte[] pdf = Presses.pdf(card, Paper.A6, Locale.ENGLISH);
        if (state == CardState.IN_FORCE || state == CardState.RECHECK_DUE) {
            assertThat(PageText.across(pdf)).isEmpty();
            assertThat(PageText.of(pdf)).doesNotContain("Copy for the file").contains("valid only for this mix");
            return;
        }
        String word = state == CardState.NOT_YET
                ? "NOT YET IN FORCE"
                : state == CardState.NOT_VERIFIED
                        ? "NOT VERIFIED"
                        : state.name().replace('_', ' ');
        assertThat(PageText.across(pdf)).isEqualTo(word);
        assertThat(PageText.of(pdf))
                .contains(word, "as of 2026-11-25", "do not subtract this factor")
                .doesNotContain("valid only for this mix", "replaces all earlier cards");
        byte[] spanish = Presses.pdf(card, Paper.CARD_4X6, Locale.forLanguageTag("es-MX"));
        assertThat(PageText.across(spanish)).isNotEmpty().isNotEqualTo(word);
        assertThat(PageText.of(spanish)).contains("no restar este factor");
    }

    @Test
    void saysHowFarTheLabBookReached() {
        assertThat(english(Cards.usual())).contains("Lab book: 214 entries, 3f2a-91c0-77de-0b1c");
    }

    @Test
    void saysWhoTookDoubtsOnAndWhy() {
        assertThat(english(Cards.usual())).doesNotContain("Doubts");
        assertThat(english(Cards.takenOn(Cards.usual(), "checked the day after", "M. Ash", "R. Vale")))
                .contains("Doubts about the trials overridden by M. Ash (2): checked the day after")
                .contains("overridden by R. Vale (2)");
        assertThat(english(Cards.takenOn(Cards.usual(), "checked", "M. Ash", "R. Vale", "T. Oak")))
                .contains(
                        "overridden by M. Ash (2): checked",
                        "Further doubts overridden by R. Vale, T. Oak; the lab book")
                .doesNotContain("overridden by R. Vale (2)");
    }

    @Test
    void sourcesThatDoNotFitAreCounted() {
        assertThat(english(Cards.everythingLong("0.3", true))).contains("; and 5 more");
    }

    @Test
    void aMissingApprovalIsADash() {
        FactorCard card = Cards.withIssue(Cards.usual(), FactorIssue.Action.ISSUED, "");
        assertThat(english(card)).contains("R. Alder \u2013 Printed");
    }

    @ParameterizedTest
    @CsvSource({
        "de-DE,ABZIEHEN,'Luft = Ablesung \u2212 G; G = +0,3 %','Ladung entspricht bei Ablesung 4,8 bis 7,8','5,0 4,7'",
        "fr-FR,SOUSTRAIRE,'Air = lecture \u2212 G ; G = +0,3 %','Charge conforme pour les lectures de 4,8 \u00e0"
                + " 7,8','5,0 4,7'",
        "es-ES,RESTAR,'Aire = lectura \u2212 G; G = +0,3 %','La amasada cumple con lecturas de 4,8 a 7,8','5,0 4,7'",
        "es-MX,RESTAR,'Aire = lectura \u2212 G; G = +0.3 %','La carga cumple con lecturas de 4.8 a 7.8','5.0 4.7'"
    })
    void wordsAndNumbersAreInTheLanguageOfTheCard(
            String tag, String subtract, String factor, String passes, String row) {
        for (Paper paper : List.of(Paper.A6, Paper.CARD_4X6, Paper.HALF_LETTER, Paper.WALLET)) {
            assertThat(Presses.text(Cards.usual(), paper, Locale.forLanguageTag(tag)))
                    .contains(subtract, factor, row)
                    // Text of a wallet card is taken line by line across front and back.
                    .contains(passes.split(paper == Paper.WALLET ? " " : "\n"))
                    .doesNotContain("SUBTRACT");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"ar-EG", "fa-IR", "hi-IN-u-nu-deva", "th-TH-u-nu-thai", "bn-BD", "und"})
    void digitsStayReadableInEveryLocale(String tag) {
        assertThat(Presses.text(Cards.usual(), Paper.A6, Locale.forLanguageTag(tag)))
                .contains("0.3 % air", "Load passes at readings 4.8 to 7.8", "2026-11-25")
                .doesNotContain("\uFFFD");
    }

    @Test
    void charactersOutsideTheTypefaceAreSeenToBeMissing() {
        FactorCard card = Cards.named(
                "Lab \u6df7\u51dd\u571f \u0645 \ud83d\ude00",
                "M-\u20291\t2",
                "two\r\nlines \u200e\u00adand\u202fmore",
                "\u4e2d",
                2);
        assertThat(english(card))
                .contains("Lab \uFFFD\uFFFD\uFFFD \uFFFD \uFFFD")
                .contains("M- 1 2")
                .contains("two lines and more")
                .contains("\uFFFD stands for a character that the typeface of this card lacks");
        assertThat(english(Cards.usual())).doesNotContain("lacks");
    }

    @ParameterizedTest
    @EnumSource(
            value = Paper.class,
            names = {"A4", "LETTER"})
    void refusesPaperThatIsNoCard(Paper paper) {
        assertThatThrownBy(() -> Presses.pdf(Cards.usual(), paper, Locale.ENGLISH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("paper must be A6, 4x6in, half-letter or wallet for a card, but is " + paper.symbol());
    }

    @Test
    void refusesTheCardOfAWithdrawal() {
        FactorCard card = Cards.withIssue(Cards.usual(), FactorIssue.Action.WITHDRAWN, "M. Thorne");
        assertThatThrownBy(() -> Presses.pdf(card, Paper.A6, Locale.ENGLISH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("issue must hand out a factor, but is TW-214/r3 withdrawn");
    }
}
