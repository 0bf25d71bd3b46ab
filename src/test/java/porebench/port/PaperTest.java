package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.evidence.paper.CardSize;

/** Sizes of paper: A6 and A4 of ISO 216 and ID-1 of ISO/IEC 7810 in mm; 4 x 6 in, 5 1/2 x 8 1/2 in and 8 1/2 x 11 in at 25.4 mm an inch. */
class PaperTest {
    @ParameterizedTest
    @CsvSource({
        "A6, A6, 105, 148",
        "CARD_4X6, 4x6in, 101.6, 152.4",
        "HALF_LETTER, half-letter, 139.7, 215.9",
        "WALLET, wallet, 85.6, 54",
        "A4, A4, 210, 297",
        "LETTER, letter, 215.9, 279.4"
    })
    void eachSizeHasItsWordAndItsSides(Paper paper, String word, double width, double height) {
        assertThat(paper.symbol()).isEqualTo(word);
        assertThat(paper.widthMillimetres()).isEqualTo(width, within(1e-9));
        assertThat(paper.heightMillimetres()).isEqualTo(height, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(value = Paper.class, names = "WALLET", mode = EnumSource.Mode.EXCLUDE)
    void theShortSideComesFirstButOnAWalletCard(Paper paper) {
        assertThat(paper.widthMillimetres()).isLessThan(paper.heightMillimetres());
    }

    @Test
    void sixSizesAreKnown() {
        assertThat(Paper.values()).hasSize(6);
    }

    @Test
    void paperForSheetsIsNoCard() {
        assertThat(Paper.A4.card()).isEmpty();
        assertThat(Paper.LETTER.card()).isEmpty();
        for (CardSize size : CardSize.values()) {
            assertThat(Paper.valueOf(size.name()).card()).contains(size);
        }
    }
}
