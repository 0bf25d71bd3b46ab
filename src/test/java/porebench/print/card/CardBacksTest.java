package porebench.print.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.paper.CardChart;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.air.PassWindow;
import porebench.port.OutputFile;
import porebench.port.Waiting;
import porebench.print.Cards;
import porebench.print.DrawnLines;
import porebench.print.PageText;
import porebench.print.Presses;
import porebench.record.book.Progress;

/** Backs of cards lie behind their fronts when the sheet is turned on its long edge. */
class CardBacksTest {
    private static final double POINTS = 72 / 25.4;

    @TempDir
    Path folder;

    private byte[] pdf(List<FactorCard> cards, CardLook look) throws IOException {
        Path file = folder.resolve("cards.pdf");
        try (Waiting waiting = Presses.PRESS.ready(cards, look, OutputFile.replacing(file), Progress.UNHEARD)) {
            waiting.release();
        }
        return Files.readAllBytes(file);
    }

    private static List<FactorCard> named(int count) {
        return IntStream.range(0, count)
                .mapToObj(n -> Cards.named("Lab", "MIX-" + n, "", "pit", 1))
                .toList();
    }

    /** Returns where a text stands first on a page, counted from 1. */
    private static PageText.Run first(byte[] pdf, int page, String text) {
        return PageText.runs(pdf).stream()
                .filter(run -> run.page() == page && run.text().contains(text))
                .findFirst()
                .orElseThrow();
    }

    /** Returns in which column and row of cards something stands. */
    private static List<Integer> place(PageText.Run run, PDRectangle page, CardLook look, int columns, int rows) {
        double width = look.widthMillimetres() * POINTS;
        double height = look.heightMillimetres() * POINTS;
        double left = (page.getWidth() - columns * width) / 2;
        double top = (page.getHeight() - rows * height) / 2;
        return List.of((int) ((run.left() - left) / width), (int) ((run.baseline() - top) / height));
    }

    // Turned on the long edge, an upright sheet's left column becomes the right one; of a lying sheet the upper row
    // becomes the
    // lower one, of which there is one here.
    @ParameterizedTest
    @CsvSource({
        "A6,A4,2,2,4",
        "A6,A4,2,2,3",
        "A6,LETTER,2,1,2",
        "CARD_4X6,A4,2,1,2",
        "HALF_LETTER,LETTER,2,1,2",
        "HALF_LETTER,A4,1,1,1"
    })
    void backsLieBehindTheirFronts(CardSize size, CardLook.Sheet sheet, int columns, int rows, int cards)
            throws IOException {
        CardLook look = new CardLook(size, List.of(PaperLanguage.ENGLISH), Optional.of(sheet), CardLook.ALL, true);
        byte[] pdf = pdf(named(cards), look);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            PDRectangle page = document.getPage(0).getMediaBox();
            PDRectangle back = document.getPage(1).getMediaBox();
            assertThat(back.getWidth()).isEqualTo(page.getWidth());
            assertThat(back.getHeight()).isEqualTo(page.getHeight());
            boolean isLying = page.getWidth() > page.getHeight();
            for (int n = 0; n < cards; n++) {
                List<Integer> front = place(first(pdf, 1, "MIX-" + n), page, look, columns, rows);
                List<Integer> behind = place(first(pdf, 2, "MIX-" + n), page, look, columns, rows);
                assertThat(front).isEqualTo(List.of(n % columns, n / columns));
                assertThat(behind)
                        .isEqualTo(
                                isLying
                                        ? List.of(front.get(0), rows - 1 - front.get(1))
                                        : List.of(columns - 1 - front.get(0), front.get(1)));
            }
        }
        assertThat(crosses(pdf, 1)).hasSameSizeAs(crosses(pdf, 0));
    }

    /** Crosses of both sides lie on each other when the sheet is turned: every line of one has its mirror image on the other. */
    @Test
    void crossesOfBothSidesLieOnEachOther() throws IOException {
        CardLook look = new CardLook(
                CardSize.A6, List.of(PaperLanguage.ENGLISH), Optional.of(CardLook.Sheet.A4), CardLook.ALL, true);
        byte[] pdf = pdf(named(3), look);
        double width = 210 * POINTS;
        List<DrawnLines.Line> backs = crosses(pdf, 1);
        assertThat(backs).hasSize(3 * 4 * 2);
        for (DrawnLines.Line line : crosses(pdf, 0)) {
            assertThat(backs).anySatisfy(other -> {
                assertThat(other.toX()).isEqualTo(width - line.fromX(), within(1e-2));
                assertThat(other.fromX()).isEqualTo(width - line.toX(), within(1e-2));
                assertThat(Math.min(other.fromY(), other.toY()))
                        .isEqualTo(Math.min(line.fromY(), line.toY()), within(1e-2));
            });
        }
    }

    /** Returns the lines of the crosses: 4 mm long and 0.35 points wide. */
    private static List<DrawnLines.Line> crosses(byte[] pdf, int page) throws IOException {
        return DrawnLines.of(pdf, page).lines().stream()
                .filter(line -> Math.abs(line.width() - 0.35) < 1e-3)
                .filter(line ->
                        Math.abs(Math.hypot(line.fromX() - line.toX(), line.fromY() - line.toY()) - 4 * POINTS) < 1e-2)
                .toList();
    }

    /** Of two languages each has its chart behind its own front. On a page of its own, lying, a pair is turned on its upper edge. */
    @Test
    void eachLanguageHasItsChartBehindIt() throws IOException {
        List<PaperLanguage> both = List.of(PaperLanguage.GERMAN, PaperLanguage.ENGLISH);
        byte[] alone = pdf(named(1), new CardLook(CardSize.A6, both, Optional.empty(), 1, true));
        double middle = 105 * POINTS;
        assertThat(first(alone, 1, "ABZIEHEN").left()).isLessThan(middle);
        assertThat(first(alone, 2, "Ablesung").left()).isLessThan(middle);
        assertThat(first(alone, 2, "Reading").left()).isGreaterThan(middle);
        CardLook onSheet = new CardLook(CardSize.A6, both, Optional.of(CardLook.Sheet.A4), CardLook.ALL, true);
        byte[] sheet = pdf(named(2), onSheet);
        assertThat(first(sheet, 1, "ABZIEHEN").left()).isLessThan(middle);
        assertThat(first(sheet, 2, "Ablesung").left()).isGreaterThan(middle);
        assertThat(first(sheet, 2, "Reading").left()).isLessThan(middle);
    }

    @Test
    void everyPageOfFrontsIsFollowedByItsBacks() throws IOException {
        CardLook look = new CardLook(
                CardSize.A6, List.of(PaperLanguage.FRENCH), Optional.of(CardLook.Sheet.A4), CardLook.ALL, true);
        byte[] pdf = pdf(named(5), look);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(4);
        }
        assertThat(first(pdf, 3, "MIX-4").text()).isEqualTo("MIX-4");
        assertThat(first(pdf, 4, "MIX-4").text()).isEqualTo("MIX-4");
        List<String> second = PageText.runs(pdf).stream()
                .filter(run -> run.page() == 2)
                .map(PageText.Run::text)
                .toList();
        assertThat(second).contains("MIX-0", "MIX-1", "MIX-2", "MIX-3").doesNotContain("MIX-4");
    }

    /** Air that is reported to half percents could be read from a wallet card, but folded it has no side left. */
    @Test
    void aWalletCardHasNoSideForAChart() {
        FactorCard usual = Cards.usual();
        List<PassWindow.Row> rows = new ArrayList<>();
        for (int half = 0; half <= 16; half++) {
            BigDecimal reading = new BigDecimal("0.5").multiply(BigDecimal.valueOf(half));
            rows.add(new PassWindow.Row(reading, reading, true, new BigDecimal("0.5")));
        }
        FactorCard coarse = new FactorCard(
                usual.laboratory(),
                usual.mixId(),
                usual.mixTitle(),
                usual.sources(),
                usual.issue(),
                usual.state(),
                usual.lastDay(),
                false,
                usual.targetAirPercent(),
                usual.airTolerancePercent(),
                new BigDecimal("0.5"),
                new PassWindow(rows, Optional.of(BigDecimal.ZERO), Optional.of(new BigDecimal("8.0"))),
                usual.rule(),
                usual.head());
        assertThat(CardChart.of(coarse, CardSize.A6).problems()).isEmpty();
        assertThat(CardChart.of(coarse, CardSize.WALLET).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.code()).isEqualTo("card.chart-no-side"));
        FactorCard one = Cards.card("0.3", "6.0", "1.5", "10", "1");
        assertThat(one.window().rows()).hasSize(1);
        assertThat(CardChart.of(one, CardSize.A6).value()).isEmpty();
        assertThatThrownBy(() -> pdf(
                        List.of(one),
                        CardLook.of(CardSize.A6, PaperLanguage.ENGLISH).withChart(true)))
                .hasMessageContaining("card.chart-too-fine");
    }
}
