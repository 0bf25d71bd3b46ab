package porebench.evidence.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.profile.Profiles;
import porebench.print.Cards;
import porebench.print.SievedCards;

/**
 * What readings of a wet-sieved concrete mean for the full mixture and the mortar, on the card; G is 0.3 %, the load passes from 4.5
 * to 7.5 % of air, the volumes are 0.95 m3 in all, 0.095 held, 0.57 of mortar.
 */
class SievedAirsTest {
    private static final FactorCard CARD = Cards.wetSieved(Cards.card("0.3", "6.0", "1.5", "0.1", "10"));

    /**
     * By pencil:
     *
     * <pre>
     * 4.8: sieved 4.5; 384.75 / (95 - 0.4275) = 4.0683, 384.75 / (57 + 1.2825) = 6.6015
     * 7.8: sieved 7.5; 641.25 / (95 - 0.7125) = 6.8010, 641.25 / (57 + 2.1375) = 10.8434
     * 6.3: sieved 6.0; 513 / (95 - 0.57) = 5.4326, 513 / (57 + 1.71) = 8.7379
     * </pre>
     */
    @Test
    void tellsBothAirsOfEveryReading() {
        SievedAirs airs = SievedCards.airs().orElseThrow();
        assertThat(airs.rows())
                .hasSize(98)
                .first()
                .satisfies(first -> assertThat(first.reading()).isEqualByComparingTo("0.3"));
        assertThat(row(airs, "6.3")).containsExactly("6.0", "5.4", "8.7");
        assertThat(airs.lowest())
                .hasValueSatisfying(row -> assertThat(row.reading()).isEqualByComparingTo("4.8"));
        assertThat(airs.highest())
                .hasValueSatisfying(row -> assertThat(row.reading()).isEqualByComparingTo("7.8"));
        assertThat(row(airs, "4.8")).containsExactly("4.5", "4.1", "6.6");
        assertThat(row(airs, "7.8")).containsExactly("7.5", "6.8", "10.8");
    }

    private static List<String> row(SievedAirs airs, String reading) {
        SievedAirs.Row row = airs.rows().stream()
                .filter(one -> one.reading().compareTo(new BigDecimal(reading)) == 0)
                .findFirst()
                .orElseThrow();
        return List.of(
                row.sieved().toString(),
                row.fullMixture().toString(),
                row.mortar().toString());
    }

    @Test
    void theCardSaysThemOfTheReadingsBetweenWhichALoadPasses() {
        CardWords english = CardWords.in(PaperLanguage.of(Locale.ENGLISH));
        assertThat(CardText.sievedAirs(CARD.spreading(SievedCards.airs()), english))
                .containsExactly(
                        "At reading 4.8: full mixture 4.1 %, mortar 6.6 %.",
                        "At reading 7.8: full mixture 6.8 %, mortar 10.8 %.");
        assertThat(CardText.of(CARD.spreading(SievedCards.airs()), english))
                .contains("At reading 7.8: full mixture 6.8 %");
        CardWords german = CardWords.in(PaperLanguage.of(Locale.GERMAN));
        assertThat(CardText.sievedAirs(CARD.spreading(SievedCards.airs()), german))
                .first()
                .isEqualTo("Bei Ablesung 4,8: gesamte Mischung 4,1 %, Mörtel 6,6 %.");
    }

    @Test
    void aMixThatDoesNotGiveItsVolumesSaysSo() {
        CardWords english = CardWords.in(PaperLanguage.of(Locale.ENGLISH));
        assertThat(CardText.sievedAirs(CARD, english))
                .containsExactly("Full mixture and mortar: not on this card, because the mix design does not give their"
                        + " volumes.");
        assertThat(CardText.sievedAirs(Cards.usual(), english))
                .as("not wet-sieved")
                .isEmpty();
    }

    /** Target 6.1 with no tolerance: only the reading 6.4 passes, and is said once. */
    @Test
    void oneReadingIsSaidOnce() {
        FactorCard narrow = Cards.wetSieved(Cards.card("0.3", "6.1", "0", "0.1", "10"));
        Optional<SievedAirs> airs = SievedAirs.of(
                SievedCards.BATCH, new BigDecimal("0.3"), new BigDecimal("0.1"), narrow.window(), Profiles.standard());
        assertThat(CardText.sievedAirs(narrow.spreading(airs), CardWords.in(PaperLanguage.of(Locale.ENGLISH))))
                .containsExactly("At reading 6.4: full mixture 5.5 %, mortar 8.9 %.");
    }
}
