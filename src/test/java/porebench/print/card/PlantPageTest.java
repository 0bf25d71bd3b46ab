package porebench.print.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.CardWords;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.evidence.paper.PlantCard;
import porebench.evidence.paper.PlantText;
import porebench.method.Problem;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.port.Waiting;
import porebench.print.Cards;
import porebench.print.PageText;
import porebench.print.Plants;
import porebench.print.Presses;
import porebench.print.code.CodePicture;
import porebench.print.page.QrMark;
import porebench.record.book.Progress;
import porebench.record.id.MixId;

/** The pages of a plant's card, read back from the PDF. */
class PlantPageTest {
    @TempDir
    Path folder;

    static Stream<Arguments> looks() {
        return Stream.of(CardSize.A6, CardSize.CARD_4X6, CardSize.HALF_LETTER)
                .flatMap(size -> Stream.of(PaperLanguage.values()).map(language -> Arguments.of(size, language)));
    }

    private byte[] pdf(PlantCard card, CardLook look) throws IOException {
        Path file = folder.resolve("plant.pdf");
        List<PlantCard> pages = Presses.PRESS.pages(card, look);
        try (Waiting waiting = Presses.PRESS.readyPlant(pages, look, OutputFile.replacing(file), Progress.UNHEARD)) {
            waiting.release();
        }
        return Files.readAllBytes(file);
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** The number beside the name of a mix is its own: no other number stands nearer to the height of the name. */
    @ParameterizedTest
    @MethodSource("looks")
    void eachNumberStandsBesideItsMix(CardSize size, PaperLanguage language) throws IOException {
        CardWords words = CardWords.in(language);
        CardLook look = CardLook.of(size, language);
        for (int mixes : new int[] {1, 5, 12, 30}) {
            PlantCard whole = Plants.usual(mixes);
            byte[] pdf = pdf(whole, look);
            List<PageText.Run> runs = PageText.runs(pdf);
            // In the order in which they are drawn: the lines of a row follow each other.
            String text = flat(runs.stream().map(PageText.Run::text).collect(Collectors.joining(" ")));
            assertThat(text).contains(words.say("plant.head.number")).doesNotContain("\uFFFD", "\u2026");
            for (FactorCard card : whole.cards()) {
                PageText.Run mix = only(runs, card.mixId().text());
                PageText.Run number = runs.stream()
                        .filter(run -> run.page() == mix.page() && run.left() > mix.right())
                        .filter(run -> run.text().matches("[\u22120-9.,]+"))
                        .min(Comparator.comparingDouble(run -> Math.abs(run.baseline() - mix.baseline())))
                        .orElseThrow();
                assertThat(number.text())
                        .as(card.mixId().text())
                        .isEqualTo(words.number(card.issue().factorPercent()));
                // What docs/cards.md states: digits of 5 mm, 20 points; names of 8.5 points.
                assertThat(number.size()).isGreaterThanOrEqualTo(20);
                assertThat(mix.size()).isGreaterThanOrEqualTo(8.5);
                assertThat(text).contains(flat(PlantText.terms(card, words)));
            }
            assertThat(runs).allMatch(run -> run.size() >= 5.5);
        }
    }

    private static PageText.Run only(List<PageText.Run> runs, String text) {
        List<PageText.Run> found =
                runs.stream().filter(run -> run.text().equals(text)).toList();
        assertThat(found).as(text).hasSize(1);
        return found.get(0);
    }

    // Of A6, by eye on the pages: five rows; each page is full but for what is spread evenly. Half letter takes six, in
    // larger type.
    @ParameterizedTest
    @CsvSource({"A6,1,1", "A6,5,1", "A6,12,3", "A6,30,6", "CARD_4X6,12,3", "HALF_LETTER,5,1", "HALF_LETTER,12,2"})
    void whatIsTooMuchForOneCardGoesOnMoreAndEachSaysWhichItIs(CardSize size, int mixes, int expected)
            throws IOException {
        PlantCard whole = Plants.usual(mixes);
        CardLook look = CardLook.of(size, PaperLanguage.ENGLISH);
        List<PlantCard> pages = Presses.PRESS.pages(whole, look);
        assertThat(pages).hasSize(expected);
        assertThat(pages.stream().flatMap(page -> page.rows().stream())).containsExactlyElementsOf(whole.rows());
        List<PageText.Run> runs = PageText.runs(pdf(whole, look));
        for (int page = 1; page <= expected; page++) {
            String said = "Card " + page + " of " + expected;
            int number = page;
            assertThat(runs.stream()
                            .anyMatch(run -> run.page() == number && run.text().equals(said)))
                    .as(said)
                    .isEqualTo(expected > 1);
        }
    }

    @ParameterizedTest
    @MethodSource("looks")
    void theCodesReadFromThePagesSayTheirTexts(CardSize size, PaperLanguage language) throws IOException {
        CardLook look = CardLook.of(size, language);
        for (PlantCard whole : List.of(Plants.usual(5), Plants.everything())) {
            List<PlantCard> pages = Presses.PRESS.pages(whole, look);
            List<String> read = codes(pdf(whole, look), pages.size());
            assertThat(read)
                    .containsExactlyElementsOf(pages.stream()
                            .map(page -> PlantText.of(page, CardWords.in(language)))
                            .toList());
            assertThat(read.get(0)).containsPattern("\\[TW-\\d+/r3.*] [2-9A-Z]{4}-[2-9A-Z]{4}$");
        }
    }

    @Test
    void bothLanguagesAreWholeCardsWithCodesOfTheirOwn() throws IOException {
        CardLook look =
                new CardLook(CardSize.A6, List.of(PaperLanguage.FRENCH, PaperLanguage.GERMAN), Optional.empty(), 1);
        PlantCard whole = Plants.usual(3);
        byte[] pdf = pdf(whole, look);
        assertThat(PageText.runs(pdf))
                .extracting(PageText.Run::text)
                .contains("SOUSTRAIRE G, % d'air", "G ABZIEHEN, % Luft");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 400);
            assertThat(code(page, 0, page.getWidth() / 2))
                    .containsExactly(PlantText.of(whole, CardWords.in(PaperLanguage.FRENCH)));
            assertThat(code(page, page.getWidth() / 2, page.getWidth()))
                    .containsExactly(PlantText.of(whole, CardWords.in(PaperLanguage.GERMAN)));
        }
    }

    /** Long titles fill the code before they fill the rows: no square of any page is smaller than 0.3 mm of 36 mm. */
    @ParameterizedTest
    @MethodSource("looks")
    void noSquareOfACodeIsTooSmall(CardSize size, PaperLanguage language) {
        PlantCard card = Plants.of(IntStream.rangeClosed(1, 12)
                .mapToObj(mix -> Plants.row(mix, Cards.LONG_TITLE))
                .toList());
        List<PlantCard> pages = Presses.PRESS.pages(card, CardLook.of(size, language));
        assertThat(pages).hasSizeGreaterThan(2);
        for (PlantCard page : pages) {
            assertThat(QrMark.square(PlantText.of(page, CardWords.in(language)), 36))
                    .isGreaterThanOrEqualTo(0.3);
        }
    }

    /** Each face may lie on a sheet with crosses to cut by, as cards of their own do. */
    @Test
    void pagesLieOnSheetsToo() throws IOException {
        CardLook look =
                new CardLook(CardSize.A6, List.of(PaperLanguage.ENGLISH), Optional.of(CardLook.Sheet.A4), CardLook.ALL);
        try (PDDocument document = Loader.loadPDF(pdf(Plants.usual(30), look))) {
            // Six cards, four to a sheet.
            assertThat(document.getNumberOfPages()).isEqualTo(2);
        }
    }

    /** Reads the code as a phone is held over it: the upper right quarter of a face. */
    private static List<String> code(BufferedImage page, int from, int to) {
        int middle = (from + to) / 2;
        return CodePicture.texts(page.getSubimage(middle, 0, to - middle, page.getHeight() / 2));
    }

    private List<String> codes(byte[] pdf, int pages) throws IOException {
        List<String> all = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(pages);
            for (int page = 0; page < pages; page++) {
                BufferedImage drawn = new PDFRenderer(document).renderImageWithDPI(page, 400);
                all.addAll(code(drawn, 0, drawn.getWidth()));
            }
        }
        return all;
    }

    /** Both kinds of meter, conditions, wet-sieved concrete, a negative factor, doubts taken on, a mix without a factor. */
    @Test
    void whatElseHasToBeKnownOfANumberStandsInItsRow() throws IOException {
        CardLook look = CardLook.of(CardSize.A6, PaperLanguage.ENGLISH);
        String text = flat(PageText.runs(pdf(Plants.everything(), look)).stream()
                .map(PageText.Run::text)
                .collect(Collectors.joining(" ")));
        assertThat(text)
                .contains("Plant: Lower Ebber Valley, line 2")
                .contains("Type A: Air = h1 \u2212 h2 \u2212 G", "Type B: Air = reading \u2212 G")
                .contains("Holds only: only with the batch water of the well, from 5 to 30 degrees C")
                .contains("Wet-sieve the concrete over 37.5 mm")
                .contains("G is negative: to subtract it is to add 0.2.")
                .contains("Doubts about the trials overridden by P. Linden, M. Thorne")
                .contains("Take no number of another row: ask the laboratory.", "NO FACTOR", "TW-999")
                .contains("Recheck by 2027-11-24 07:05.", "Printed 2026-11-25")
                .contains("shield your eyes, keep your face from glass", "turn your face from the petcocks")
                .contains("Issued by R. Alder; approved by M. Thorne.")
                .contains("A mix without a row here: look on the other cards of this plant, or ask the laboratory.");
    }

    @Test
    void aCardOfNobodyNamesNoLaboratory() throws IOException {
        assertThat(PageText.of(pdf(Plants.ofNobody(), CardLook.of(CardSize.A6, PaperLanguage.ENGLISH))))
                .startsWith("Factor card");
    }

    private static List<Problem> refused(PlantCard card, CardSize size) {
        List<Problem> problems = new ArrayList<>();
        assertThatThrownBy(() -> Presses.PRESS.pages(card, CardLook.of(size, PaperLanguage.ENGLISH)))
                .isInstanceOfSatisfying(OutputRefused.class, refused -> problems.addAll(refused.problems()));
        return problems;
    }

    @Test
    void aWalletIsTooSmallAndTheOthersAreNamed() {
        assertThat(refused(Plants.usual(1), CardSize.WALLET)).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("plant.no-wallet");
            assertThat(problem.values()).containsExactly("wallet", "A6, 4x6in, half-letter");
        });
    }

    /** All rows that do not fit are named at once. */
    @Test
    void aRowThatDoesNotFitIsRefusedWithItsMix() {
        FactorCard wide = Cards.under(Cards.everythingLong("-0.35", true), Cards.WIDEST_CONDITIONS);
        PlantCard.Row unnamed = PlantCard.Row.without(new MixId("W".repeat(120)), "");
        PlantCard card = Plants.of(List.of(PlantCard.Row.of(wide), Plants.row(2), unnamed));
        assertThat(refused(card, CardSize.A6))
                .extracting(Problem::code)
                .containsExactly("plant.row-does-not-fit", "plant.row-does-not-fit");
        assertThat(refused(card, CardSize.A6).get(1).values())
                .containsExactly("W".repeat(120), "A6", "4x6in, half-letter");
    }

    @Test
    void longNamesThatFitStandWhole() throws IOException {
        String text = PageText.of(pdf(Plants.longNames(), CardLook.of(CardSize.HALF_LETTER, PaperLanguage.ENGLISH)));
        assertThat(text.replaceAll("\\s", ""))
                .contains("TW-214/2026-REV-C/BRIDGE-DECK-SUMMER-PUMPED-TWO-SANDS")
                .doesNotContain("\u2026");
    }

    @Test
    void aNameOfAPlantThatDoesNotFitIsRefused() {
        PlantCard card = Plants.of("MW".repeat(200), Plants.usual(1).rows());
        assertThat(refused(card, CardSize.A6)).extracting(Problem::code).containsExactly("plant.row-does-not-fit");
    }

    @Test
    void charactersThatTheTypefaceLacksAreRefusedInNamesOfMixesAndSaidOfOthers() throws IOException {
        PlantCard.Row with = PlantCard.Row.of(Cards.named("Lab", "M-\uD83D\uDE9A", "title", "sand", 1));
        PlantCard.Row without = PlantCard.Row.without(new MixId("\u6DF7"), "");
        assertThat(refused(Plants.of(List.of(with, without)), CardSize.A6))
                .extracting(Problem::code)
                .containsExactly("card.mix-not-shown", "plant.row-not-shown");
        PlantCard plant = Plants.of("\u6DF7 North", Plants.usual(2).rows());
        assertThat(PageText.of(pdf(plant, CardLook.of(CardSize.A6, PaperLanguage.ENGLISH))))
                .contains("\uFFFD North", "\uFFFD stands for a character that the typeface of this card lacks");
    }
}
