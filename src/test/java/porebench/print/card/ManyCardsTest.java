package porebench.print.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.port.OutputFile;
import porebench.port.Waiting;
import porebench.print.Cards;
import porebench.print.PageText;
import porebench.print.Presses;
import porebench.record.book.Progress;

/** What many cards have in common stands in their file once, and every card says what it would say alone. */
class ManyCardsTest {
    private static final CardLook A6 = CardLook.of(CardSize.A6, PaperLanguage.ENGLISH);

    @TempDir
    Path folder;

    private byte[] pdf(List<FactorCard> cards, CardLook look) throws IOException {
        Path file = folder.resolve("cards.pdf");
        try (Waiting waiting = Presses.PRESS.ready(cards, look, OutputFile.replacing(file), Progress.UNHEARD)) {
            waiting.release();
        }
        return Files.readAllBytes(file);
    }

    /** Cards of some mixes whose factors, in turn, are 0.1 to 0.9; every third has a title of two lines, so that all below it lies lower. */
    private static List<FactorCard> cards(int count) {
        return IntStream.range(0, count)
                .mapToObj(number -> named(number, Cards.card("0." + (1 + number % 9), "6.0", "1.5", "0.1", "10")))
                .toList();
    }

    private static FactorCard named(int number, FactorCard card) {
        String title =
                "Bridge deck " + number + ", 35 MPa" + (number % 3 == 0 ? ", pumped, retarded for summer placing" : "");
        return new FactorCard(
                        card.laboratory(),
                        card.mixId(),
                        title,
                        List.of("Orrin Pit sand " + number),
                        card.issue(),
                        card.state(),
                        card.lastDay(),
                        card.wetSieved(),
                        card.targetAirPercent(),
                        card.airTolerancePercent(),
                        card.divisionPercent(),
                        card.window(),
                        card.rule(),
                        card.head())
                .sealedBy(card.seal());
    }

    static Stream<CardLook> looks() {
        return Stream.of(
                A6,
                CardLook.of(CardSize.CARD_4X6, PaperLanguage.FRENCH),
                CardLook.of(CardSize.HALF_LETTER, PaperLanguage.GERMAN),
                CardLook.of(CardSize.WALLET, PaperLanguage.SPANISH_SPAIN),
                new CardLook(
                        CardSize.A6,
                        List.of(PaperLanguage.ENGLISH, PaperLanguage.SPANISH_AMERICAS),
                        Optional.empty(),
                        1));
    }

    /** The same words at the same places in the same sizes, to the hundredth of a point in which places are written. */
    @ParameterizedTest
    @MethodSource("looks")
    void everyCardSaysWhatItWouldSayAlone(CardLook look) throws IOException {
        List<FactorCard> cards = new ArrayList<>(cards(24));
        cards.add(Cards.typeA(Cards.usual()));
        cards.add(Cards.typeA(Cards.usual()));
        cards.add(Cards.in(CardState.LAPSED, Cards.usual()));
        cards.add(Cards.in(CardState.LAPSED, Cards.usual()));
        List<PageText.Run> together = PageText.runs(pdf(cards, look));
        for (int page = 1; page <= cards.size(); page++) {
            int number = page;
            List<PageText.Run> alone = PageText.runs(pdf(List.of(cards.get(page - 1)), look));
            List<PageText.Run> here =
                    together.stream().filter(run -> run.page() == number).toList();
            assertThat(here.stream().map(PageText.Run::text))
                    .as("page %d", page)
                    .containsExactlyElementsOf(
                            alone.stream().map(PageText.Run::text).toList());
            for (int run = 0; run < here.size(); run++) {
                assertThat(here.get(run).left()).isCloseTo(alone.get(run).left(), Offset.offset(0.02));
                assertThat(here.get(run).baseline()).isCloseTo(alone.get(run).baseline(), Offset.offset(0.02));
                assertThat(here.get(run).size()).isCloseTo(alone.get(run).size(), Offset.offset(0.001));
            }
        }
    }

    /** Frames, greys, ticks and signs too, which are no words: one after the other page drawn and laid over that of the card alone. */
    @Test
    void everyCardLooksAsItWouldAlone() throws IOException {
        List<FactorCard> cards = cards(30);
        byte[] together = pdf(cards, A6);
        for (int page : new int[] {0, 9, 18, 26, 29}) {
            BufferedImage here = drawn(together, page);
            BufferedImage alone = drawn(pdf(List.of(cards.get(page)), A6), 0);
            assertThat(apart(here, alone))
                    .as("dots of page %d that are not alike", page + 1)
                    .isLessThan(60);
        }
        assertThat(apart(drawn(together, 0), drawn(together, 1)))
                .as("of two cards")
                .isGreaterThan(600);
    }

    private static BufferedImage drawn(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(page, 100, ImageType.GRAY);
        }
    }

    /** Returns how many dots differ by more than a quarter of the way from black to white. */
    private static int apart(BufferedImage one, BufferedImage other) {
        int apart = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                int difference =
                        one.getRaster().getSample(x, y, 0) - other.getRaster().getSample(x, y, 0);
                apart += Math.abs(difference) > 64 ? 1 : 0;
            }
        }
        return apart;
    }

    /** Nine tables at two heights, nine frames of a factor, nine times what passes; head, cautions, validity, people: no more than 40 parts. */
    @Test
    void fixedPartsAndTypefacesStandInTheFileOnce() throws IOException {
        int[] few = parts(pdf(cards(100), A6));
        int[] many = parts(pdf(cards(300), A6));
        assertThat(few[0]).as("parts").isBetween(20, 40);
        assertThat(many[0]).as("parts of three times as many cards").isEqualTo(few[0]);
        assertThat(few[1]).as("typefaces").isEqualTo(2);
        assertThat(many[1]).isEqualTo(2);
    }

    /** Returns how many parts and how many typefaces a file holds, and how many dictionaries of resources pages refer to. */
    private static int[] parts(byte[] pdf) throws IOException {
        int parts = 0;
        int typefaces = 0;
        Set<COSBase> resources = new HashSet<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                COSObject object = document.getDocument().getObjectFromPool(key);
                if (object.getObject() instanceof COSStream stream) {
                    parts += COSName.FORM.equals(stream.getCOSName(COSName.SUBTYPE)) ? 1 : 0;
                }
                if (object.getObject() instanceof COSDictionary dictionary) {
                    typefaces += dictionary.containsKey(COSName.FONT_FILE2) ? 1 : 0;
                }
            }
            document.getPages()
                    .forEach(page -> resources.add(page.getCOSObject().getDictionaryObject(COSName.RESOURCES)));
        }
        assertThat(resources).hasSize(1);
        return new int[] {parts, typefaces};
    }

    /** About half of it is the code of squares, which nothing makes smaller. */
    @Test
    void aFurtherCardTakesLittle() throws IOException {
        int few = pdf(cards(100), A6).length;
        int many = pdf(cards(300), A6).length;
        assertThat((many - few) / 200).as("bytes a card").isBetween(600, 1300);
    }

    @Test
    void aCardAloneHasNoParts() throws IOException {
        assertThat(parts(pdf(List.of(Cards.usual()), A6))).containsExactly(0, 2);
    }
}
