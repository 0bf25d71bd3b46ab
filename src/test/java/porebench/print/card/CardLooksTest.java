package porebench.print.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.CardText;
import porebench.evidence.paper.CardWords;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.air.PassWindow;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.port.Waiting;
import porebench.print.Cards;
import porebench.print.PageText;
import porebench.print.Presses;
import porebench.print.code.CodePicture;
import porebench.record.book.Progress;

class CardLooksTest {
    private static final double POINTS = 72 / 25.4;

    @TempDir
    Path folder;

    static Stream<Arguments> looks() {
        return Stream.of(CardSize.values())
                .flatMap(size -> Stream.of(PaperLanguage.values()).map(language -> Arguments.of(size, language)));
    }

    private byte[] pdf(List<FactorCard> cards, CardLook look) throws IOException {
        Path file = folder.resolve("cards.pdf");
        try (Waiting waiting = Presses.PRESS.ready(cards, look, OutputFile.replacing(file), Progress.UNHEARD)) {
            waiting.release();
        }
        return Files.readAllBytes(file);
    }

    /** Every row that the table of a card shows is one that was computed from the factor; all that pass stand there undivided. */
    @ParameterizedTest
    @MethodSource("looks")
    void theTableIsTheComputedOne(CardSize size, PaperLanguage language) throws IOException {
        CardWords words = CardWords.in(language);
        // Half of the divisions end in 5: reported air rounds at ties on every other row.
        for (FactorCard card : List.of(Cards.usual(), Cards.card("0.25", "6.0", "1.5", "0.1", "10"))) {
            String text =
                    PageText.of(pdf(List.of(card), CardLook.of(size, language))).replaceAll("\\s+", " ");
            int shown = 0;
            for (PassWindow.Row row : card.window().rows()) {
                String air = words.number(row.air()
                        .stripTrailingZeros()
                        .setScale(Math.max(1, row.air().stripTrailingZeros().scale())));
                boolean stands = text.contains(" " + words.number(row.reading()) + " " + air + " ");
                shown += stands ? 1 : 0;
                if (row.passes() && size != CardSize.WALLET) {
                    assertThat(stands).as("%s in %s", row, text).isTrue();
                }
            }
            assertThat(shown).isGreaterThanOrEqualTo(size == CardSize.WALLET ? 8 : 18);
            // Text of a wallet card is taken line by line across front and back.
            String[] passes = CardText.passes(card, words).split(size == CardSize.WALLET ? " " : "\n");
            assertThat(text)
                    .contains(passes)
                    .contains(words.say("card.subtract"))
                    .doesNotContain("\uFFFD");
        }
    }

    @ParameterizedTest
    @MethodSource("looks")
    void theCodeReadFromThePageSaysTheTextOfTheCard(CardSize size, PaperLanguage language) throws IOException {
        FactorCard card = Cards.usual();
        String text = CardText.of(card, CardWords.in(language));
        assertThat(codes(pdf(List.of(card), CardLook.of(size, language)))).containsExactly(text);
        assertThat(text)
                .contains("TW-214", "Bridge deck, 35 MPa, 20 mm stone", "Orrin Pit sand; Fell Quarry 5-20 mm")
                .contains("2026-11-25", "2027-11-24", card.mixTitle())
                .containsPattern("\\[TW-214/r3] [2-9A-Z]{4}-[2-9A-Z]{4}$");
    }

    @Test
    void namesThatAreCutOnTheCardStandWholeInItsCode() throws IOException {
        FactorCard card = Cards.everythingLong("-0.35", true);
        byte[] pdf = pdf(List.of(card), CardLook.of(CardSize.A6, PaperLanguage.ENGLISH));
        assertThat(PageText.of(pdf)).contains("\u2026").doesNotContain("working face 8");
        assertThat(codes(pdf)).singleElement().asString().contains(Cards.LONG_TITLE, "working face 8");
    }

    private List<String> codes(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 400);
            Path file = folder.resolve("page.png");
            ImageIO.write(page, "png", file.toFile());
            return CodePicture.read(file).value().orElseThrow();
        }
    }

    // A6 is 105 mm x 148 mm by ISO 216, ID-1 is 85.60 mm x 53.98 mm by ISO/IEC 7810 (both recalled), here to 0.1 mm.
    @ParameterizedTest
    @CsvSource({"A6,105,148", "CARD_4X6,101.6,152.4", "HALF_LETTER,139.7,215.9", "WALLET,85.6,54.0"})
    void sizesAreThoseOfTheStandards(CardSize size, double width, double height) throws IOException {
        assertThat(size.widthMillimetres()).isEqualTo(width);
        assertThat(size.heightMillimetres()).isEqualTo(height);
        try (PDDocument document =
                Loader.loadPDF(pdf(List.of(Cards.usual()), CardLook.of(size, PaperLanguage.ENGLISH)))) {
            PDRectangle page = document.getPage(0).getMediaBox();
            int faces = size == CardSize.WALLET ? 2 : 1;
            assertThat((double) page.getWidth()).isEqualTo(faces * width * POINTS, Offset.offset(1e-3));
            assertThat((double) page.getHeight()).isEqualTo(height * POINTS, Offset.offset(1e-3));
        }
    }

    // By pencil, in mm: 2 x 105 = 210 and 2 x 148 = 296 of 297; 4 x 6 in twice beside on either; half letter twice on
    // letter lying;
    // a wallet card unfolded is 171.2 x 54: 5 x 54 = 270 of 297 and of 279.4.
    @ParameterizedTest
    @CsvSource({
        "A6,A4,4",
        "A6,LETTER,2",
        "CARD_4X6,A4,2",
        "CARD_4X6,LETTER,2",
        "HALF_LETTER,LETTER,2",
        "HALF_LETTER,A4,1",
        "WALLET,A4,5",
        "WALLET,LETTER,5"
    })
    void asManyAsFitLieOnASheet(CardSize size, CardLook.Sheet sheet, int fit) throws IOException {
        CardLook look = new CardLook(size, List.of(PaperLanguage.ENGLISH), Optional.of(sheet), CardLook.ALL);
        CardPlaces places = CardPlaces.of(look).orElseThrow();
        assertThat(places.count()).isEqualTo(fit);
        for (int place = 0; place < fit; place++) {
            assertThat(places.left(place)).isGreaterThan(-1e-9);
            assertThat(places.left(place) + look.widthMillimetres()).isLessThan(places.width() + 1e-9);
            assertThat(places.top(place)).isGreaterThan(-1e-9);
            assertThat(places.top(place) + look.heightMillimetres()).isLessThan(places.height() + 1e-9);
        }
        List<FactorCard> cards = new ArrayList<>();
        for (int n = 0; n <= fit; n++) {
            cards.add(Cards.named("Lab", "MIX-" + n + "-END", "", "pit", 1));
        }
        byte[] pdf = pdf(cards, look);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
        }
        for (int n = 0; n <= fit; n++) {
            assertThat(PageText.of(pdf)).containsOnlyOnce("MIX-" + n + "-END");
        }
    }

    @Test
    void noMoreLieOnASheetThanAsked() {
        CardLook look = new CardLook(CardSize.A6, List.of(PaperLanguage.FRENCH), Optional.of(CardLook.Sheet.A4), 1);
        assertThat(CardPlaces.of(look).orElseThrow().count()).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource(CardSize.class)
    void twoLanguagesLieBesideEachOtherEachWithItsOwnCode(CardSize size) throws IOException {
        List<PaperLanguage> both = List.of(PaperLanguage.GERMAN, PaperLanguage.SPANISH_SPAIN);
        byte[] pdf = pdf(List.of(Cards.usual()), new CardLook(size, both, Optional.empty(), 1));
        assertThat(PageText.of(pdf)).contains("ABZIEHEN", "RESTAR");
        assertThat(codes(pdf))
                .containsExactlyInAnyOrder(
                        CardText.of(Cards.usual(), CardWords.in(both.get(0))),
                        CardText.of(Cards.usual(), CardWords.in(both.get(1))));
    }

    /** Conditions grow word by word: each card has every word of them, or is refused. */
    @Test
    void aWalletCardHasEveryWordOfItsConditionsOrIsRefused() throws IOException {
        CardLook wallet = CardLook.of(CardSize.WALLET, PaperLanguage.ENGLISH);
        int refused = 0;
        for (int words = 1; words <= 40; words++) {
            List<String> all = IntStream.rangeClosed(10, 9 + words)
                    .mapToObj(number -> "term" + number)
                    .toList();
            try {
                byte[] pdf = pdf(List.of(Cards.under(Cards.usual(), String.join(" ", all))), wallet);
                assertThat(PageText.of(pdf)).contains(all);
            } catch (OutputRefused tooMuch) {
                assertThat(tooMuch).hasMessageContaining("card.does-not-fit");
                refused++;
            }
        }
        assertThat(refused).isBetween(1, 39);
    }

    @Test
    void whatDoesNotFitIsRefusedInPlainWordsAndLeavesNoFile() {
        CardLook wallet = CardLook.of(CardSize.WALLET, PaperLanguage.ENGLISH);
        FactorCard tooMuch = Cards.under(Cards.everythingLong("-0.35", true), Cards.WIDEST_CONDITIONS);
        assertThatThrownBy(() -> pdf(List.of(Cards.usual(), tooMuch), wallet))
                .isInstanceOf(OutputRefused.class)
                .hasMessageContaining("card.does-not-fit");
        assertThat(folder).isEmptyDirectory();
        CardLook wide = new CardLook(
                CardSize.HALF_LETTER,
                List.of(PaperLanguage.ENGLISH, PaperLanguage.FRENCH),
                Optional.of(CardLook.Sheet.A4),
                1);
        // 2 x 139.7 = 279.4 mm by 215.9 mm: A4 lying is 210 mm high.
        assertThatThrownBy(() -> pdf(List.of(Cards.usual()), wide)).hasMessageContaining("card.no-room-on-sheet");
    }

    @Test
    void aWalletCardOfAMarkedStateSaysSoOnBothSides() throws IOException {
        FactorCard card = Cards.in(CardState.REPLACED, Cards.named("Lab", "MIX-1", "", "pit", 1));
        assertThat(PageText.of(pdf(List.of(card), CardLook.of(CardSize.WALLET, PaperLanguage.ENGLISH)))
                        .replace('\n', ' '))
                .contains("do not subtract this factor")
                .doesNotContain("valid only");
    }

    @Test
    void aLookHasOneLanguageOrTwoDifferentOnes() {
        for (List<PaperLanguage> wrong : List.of(
                List.<PaperLanguage>of(),
                List.of(PaperLanguage.FRENCH, PaperLanguage.FRENCH),
                List.of(PaperLanguage.FRENCH, PaperLanguage.GERMAN, PaperLanguage.ENGLISH))) {
            assertThatThrownBy(() -> new CardLook(CardSize.A6, wrong, Optional.empty(), 1))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith("languages must be one or two different ones");
        }
    }
}
