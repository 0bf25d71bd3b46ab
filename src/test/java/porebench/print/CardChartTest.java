package porebench.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
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
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.port.Waiting;
import porebench.record.book.Progress;

/** The chart on the back of a card, held against what the PDF draws: lines, dots and the places of numbers. */
class CardChartTest {
    private static final double MILLIMETRE = 72 / 25.4;
    /** What a printer of 1200 dots an inch can do is 0.02 mm. */
    private static final double EXACT = 0.01 * MILLIMETRE;

    @TempDir
    Path folder;

    private byte[] pdf(CardLook look, FactorCard... cards) throws IOException {
        Path file = folder.resolve("cards.pdf");
        OutputFile out = OutputFile.replacing(file);
        try (Waiting waiting = Presses.PRESS.ready(List.of(cards), look, out, Progress.UNHEARD)) {
            waiting.release();
        }
        return Files.readAllBytes(file);
    }

    private static CardLook look(CardSize size, PaperLanguage... languages) {
        return new CardLook(size, List.of(languages), Optional.empty(), 1, true);
    }

    /** One scale as it stands on the page: where its lines lie, and where the numbers beside them say a value is. */
    private record Axis(double x, List<DrawnLines.Line> marks, Map<Integer, Double> numbers) {
        static Axis of(DrawnLines drawn, List<PageText.Run> runs, DrawnLines.Line upright) {
            double x = upright.fromX();
            List<DrawnLines.Line> marks = drawn.lines().stream()
                    .filter(line -> line.isLevel() && Math.abs(line.fromX() - x) < 1e-2 && line.length() < 15)
                    .sorted(Comparator.comparingDouble(DrawnLines.Line::fromY))
                    .toList();
            Map<Integer, Double> numbers = new TreeMap<>();
            for (PageText.Run run : runs) {
                if (!run.text().matches("\u2212?\\d+")) {
                    continue;
                }
                double middle = run.baseline() - 0.711 * run.size() / 2;
                marks.stream()
                        .filter(mark -> Math.abs(mark.fromY() - middle) < 0.3)
                        .filter(mark -> mark.toX() > x
                                ? run.left() > mark.toX() && run.left() - mark.toX() < 5
                                : run.right() < mark.toX() && mark.toX() - run.right() < 5)
                        .forEach(
                                mark -> numbers.put(Integer.parseInt(run.text().replace('\u2212', '-')), mark.fromY()));
            }
            return new Axis(x, marks, numbers);
        }

        /** Returns where a value lies by the two numbers farthest from each other. */
        double of(double value) {
            int low = numbers.keySet().stream().min(Integer::compareTo).orElseThrow();
            int high = numbers.keySet().stream().max(Integer::compareTo).orElseThrow();
            double unit = (numbers.get(high) - numbers.get(low)) / (high - low);
            return numbers.get(low) + (value - low) * unit;
        }

        /** Returns the length of one percent. */
        double modulus() {
            return Math.abs(of(1) - of(0));
        }
    }

    /** The three scales from left to right. */
    private static List<Axis> axes(byte[] pdf, int page) throws IOException {
        DrawnLines drawn = DrawnLines.of(pdf, page);
        List<PageText.Run> runs = PageText.runs(pdf).stream()
                .filter(run -> run.page() == page + 1)
                .toList();
        return drawn.lines().stream()
                .filter(line -> line.isUpright() && line.length() > 30)
                .sorted(Comparator.comparingDouble(DrawnLines.Line::fromX))
                .map(line -> Axis.of(drawn, runs, line))
                .toList();
    }

    static Stream<Arguments> drawn() {
        return Stream.of(CardSize.A6, CardSize.CARD_4X6, CardSize.HALF_LETTER)
                .flatMap(size -> Stream.of("0.3", "0.25", "-0.35", "1.25", "0.0", "0.95", "12.2")
                        .map(factor -> Arguments.of(size, factor)));
    }

    /** A straight line from each reading to the dot crosses the scale of air where the numbers of that scale say reading less G. */
    @ParameterizedTest
    @MethodSource("drawn")
    void aStraightLineFromTheDotToAReadingCrossesAirAtReadingLessFactor(CardSize size, String factor)
            throws IOException {
        // A tolerance so wide that some reading passes whatever the factor is.
        FactorCard card = Cards.card(factor, "5.0", "12", "0.1", "10");
        byte[] pdf = pdf(look(size, PaperLanguage.ENGLISH), card);
        List<Axis> axes = axes(pdf, 1);
        assertThat(axes).hasSize(3);
        Axis readings = axes.get(0);
        Axis airs = axes.get(1);
        Point2D dot = DrawnLines.of(pdf, 1).dots().get(0);
        assertThat(dot.getX()).isEqualTo(axes.get(2).x(), within(EXACT));
        double g = Double.parseDouble(factor);
        // 8 %: the highest reading whose air is reported to 0.1 (the figure of the standard profile, above 8 % to half
        // a division).
        assertThat(readings.numbers().keySet()).contains(0, 8);
        assertThat(readings.marks()).hasSize(81);
        for (int tenths = 0; tenths <= 80; tenths++) {
            double reading = tenths / 10.0;
            double mark = readings.marks().get(80 - tenths).fromY();
            assertThat(mark).as("reading %s", reading).isEqualTo(readings.of(reading), within(EXACT));
            double crossing = mark + (dot.getY() - mark) * (airs.x() - readings.x()) / (dot.getX() - readings.x());
            assertThat(crossing).as("reading %s", reading).isEqualTo(airs.of(reading - g), within(EXACT));
        }
    }

    /** So it does to every line of the scale of G, and wherever the air has a line of its own, it is that line that is crossed. */
    @ParameterizedTest
    @MethodSource("drawn")
    void marksOfAllThreeScalesLieOnStraightLines(CardSize size, String factor) throws IOException {
        List<Axis> axes = axes(pdf(look(size, PaperLanguage.GERMAN), Cards.card(factor, "5.0", "12", "0.1", "10")), 1);
        Axis readings = axes.get(0);
        Axis airs = axes.get(1);
        Axis factors = axes.get(2);
        // Both whole percents about G, or one of them where the number of the dot stands in the place of the other.
        assertThat(factors.marks()).hasSize(11);
        double g = Double.parseDouble(factor);
        double lowest = Math.floor(g);
        double share = (airs.x() - readings.x()) / (factors.x() - readings.x());
        assertThat(share).isEqualTo(0.2, within(1e-4));
        int hit = 0;
        for (int tenth = 0; tenth <= 10; tenth++) {
            // More of G lies lower, so further from the upper edge.
            double right = factors.marks().get(tenth).fromY();
            for (int tenths = 0; tenths <= 80; tenths++) {
                double left = readings.marks().get(80 - tenths).fromY();
                double crossing = left + (right - left) * share;
                double air = tenths / 10.0 - lowest - tenth / 10.0;
                assertThat(crossing).isEqualTo(airs.of(air), within(EXACT));
                hit += airs.marks().stream().anyMatch(mark -> Math.abs(mark.fromY() - crossing) < EXACT) ? 1 : 0;
            }
        }
        assertThat(hit).isEqualTo(11 * 81);
        factors.numbers()
                .forEach((value, y) -> assertThat(factors.marks()
                                .get((int) Math.round((value - lowest) * 10))
                                .fromY())
                        .isEqualTo(y));
    }

    /** Lines at half percents are longer than those between, those at whole percents are the longest. */
    @Test
    void linesAtHalfAndWholePercentsAreLonger() throws IOException {
        Axis readings = axes(pdf(look(CardSize.A6, PaperLanguage.ENGLISH), Cards.usual()), 1)
                .get(0);
        for (int tenths = 0; tenths <= 80; tenths++) {
            double points = tenths % 10 == 0 ? 9 : tenths % 5 == 0 ? 6 : 3;
            assertThat(readings.marks().get(80 - tenths).length()).isEqualTo(points, within(1e-3));
        }
    }

    // By pencil, of readings 0 to 8: a percent of reading is an eighth of the height, a percent of air four fifths of
    // that.
    // A6: 148 - 53 = 95 mm, 9.5 mm of air; 4 x 6 in: 99.4, 9.94. Half letter: 215.9/1.25 - 53 = 119.72, times 1.25 =
    // 149.65,
    // 14.965 mm. A line of 0.4 points is 0.1411 mm wide, on half letter 0.1764.
    // (0.3 + 0.0706)/9.5 = 0.0390; /9.94 = 0.0373; (0.3 + 0.0882)/14.965 = 0.0259.
    @ParameterizedTest
    @CsvSource({"A6,9.5,0.04", "CARD_4X6,9.94,0.04", "HALF_LETTER,14.965,0.03"})
    void howFarOffARulerReadsIsSaidAndIsSo(CardSize size, double modulus, String said) throws IOException {
        byte[] pdf = pdf(look(size, PaperLanguage.ENGLISH), Cards.usual());
        Axis airs = axes(pdf, 1).get(1);
        assertThat(airs.modulus() / MILLIMETRE).isEqualTo(modulus, within(0.001));
        double half = airs.marks().get(0).width() / MILLIMETRE / 2;
        double misread = (0.3 + half) / (airs.modulus() / MILLIMETRE);
        assertThat(misread).isLessThanOrEqualTo(Double.parseDouble(said)).isLessThanOrEqualTo(0.05);
        assertThat(Double.parseDouble(said) - misread).isLessThan(0.01);
        assertThat(back(pdf)).contains("A ruler 0.3 mm off reads up to " + said + " % air off.");
        // 3.5 mm is a character under 20 minutes of arc at 60 cm.
        assertThat(PageText.runs(pdf).stream()
                        .filter(run -> run.page() == 2 && run.baseline() > 75)
                        .filter(run -> run.text().matches("[0-8]")))
                .hasSizeGreaterThan(15)
                .allSatisfy(run -> assertThat(run.size() * 0.711 / MILLIMETRE).isGreaterThan(3.5));
    }

    // Readings 0 to 7 on A6: 95/7 x 4/5 = 10.857 mm. The ruler alone is 0.3/10.857 = 0.0276, with half a line 0.0341.
    @Test
    void halfALineCountsToo() throws IOException {
        assertThat(back(pdf(look(CardSize.A6, PaperLanguage.ENGLISH), Cards.card("0.3", "5.0", "1", "0.1", "7"))))
                .contains("reads up to 0.04 % air off.")
                .doesNotContain("use the table only");
    }

    private static String back(byte[] pdf) {
        String text = PageText.of(pdf).replaceAll("\\s+", " ");
        return text.substring(text.lastIndexOf("TW-214"));
    }

    static Stream<Arguments> words() {
        return Stream.of(
                Arguments.of(
                        "ENGLISH", "Reading (%) Air (%) G (%)", "G = 0.3", "the table on the front counts", "0.04"),
                Arguments.of(
                        "SPANISH_AMERICAS",
                        "Lectura (%) Aire (%) G (%)",
                        "G = 0.3",
                        "vale la tabla del frente",
                        "0.04"),
                Arguments.of(
                        "SPANISH_SPAIN", "Lectura (%) Aire (%) G (%)", "G = 0,3", "vale la tabla del anverso", "0,04"),
                Arguments.of("FRENCH", "Lecture (%) Air (%) G (%)", "G = 0,3", "le tableau au recto fait foi", "0,04"),
                Arguments.of("GERMAN", "Ablesung (%) Luft (%) G (%)", "G = 0,3", "gilt die Tabelle vorn", "0,04"));
    }

    @ParameterizedTest
    @MethodSource("words")
    void itIsReadInEveryLanguage(PaperLanguage language, String headings, String dot, String counts, String error)
            throws IOException {
        String back = back(pdf(look(CardSize.A6, language), Cards.usual()));
        assertThat(back).startsWith("TW-214").contains(headings, dot, counts, error + " %", "2027-11-24");
    }

    /** Nothing is cut off, stands over something else or reaches into the margin, however long the words are. */
    @ParameterizedTest
    @EnumSource(PaperLanguage.class)
    void nothingIsCutOffOrStandsOverSomethingElse(PaperLanguage language) throws IOException {
        for (CardSize size : List.of(CardSize.A6, CardSize.CARD_4X6, CardSize.HALF_LETTER)) {
            for (FactorCard card : List.of(
                    Cards.usual(),
                    Cards.typeA(Cards.card("-12.25", "6.0", "30", "0.1", "10")),
                    Cards.everythingLong("-0.05", true),
                    Cards.training("1.00", true))) {
                byte[] pdf = pdf(look(size, language), card);
                List<PageText.Run> runs = PageText.runs(pdf).stream()
                        .filter(run -> run.page() == 2)
                        .toList();
                for (PageText.Run run : runs) {
                    assertThat(run.text()).doesNotContain("\u2026", "\uFFFD");
                    assertThat(runs.stream().filter(other -> other != run && run.overlaps(other)))
                            .as("over %s", run)
                            .isEmpty();
                }
                assertMarginIsWhite(pdf);
            }
        }
    }

    /** 5 mm: the margin of a card is 6 mm, and a cross to cut by reaches 2 mm into it. */
    private static void assertMarginIsWhite(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(1, 100);
            int margin = (int) (5 / 25.4 * 100);
            int dark = 0;
            for (int x = 0; x < page.getWidth(); x++) {
                for (int y = 0; y < page.getHeight(); y++) {
                    boolean isInside =
                            x >= margin && y >= margin && x < page.getWidth() - margin && y < page.getHeight() - margin;
                    boolean isDark = (page.getRGB(x, y) & 0xFF) < 200;
                    assertThat(isDark && !isInside).as("%s, %s", x, y).isFalse();
                    dark += isDark ? 1 : 0;
                }
            }
            assertThat(dark).isGreaterThan(1000);
        }
    }

    @Test
    void theDotIsBlackWhereTheFactorLies() throws IOException {
        byte[] pdf = pdf(look(CardSize.A6, PaperLanguage.ENGLISH), Cards.usual());
        Point2D dot = DrawnLines.of(pdf, 1).dots().get(0);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(1, 288);
            for (int step = -6; step <= 6; step += 3) {
                assertThat(page.getRGB((int) (dot.getX() * 4) + step, (int) (dot.getY() * 4)) & 0xFFFFFF)
                        .isZero();
            }
        }
    }

    /** Divisions too fine for lines of their own are left out; the numbers stay. */
    @ParameterizedTest
    @CsvSource({"0.05,81", "0.25,33", "0.2,41", "0.3,79", "0.1,81"})
    void linesStandAtTheDivisionsOfTheMeterWhereThereIsRoom(String division, int lines) throws IOException {
        FactorCard card = Cards.card("0.3", "5.0", "3", division, "8");
        Axis readings =
                axes(pdf(look(CardSize.A6, PaperLanguage.ENGLISH), card), 1).get(0);
        // 0.3 does not lead to a whole percent: tenths, up to the highest reading, 26 x 0.3 = 7.8.
        assertThat(readings.marks()).hasSize(lines);
        assertThat(readings.numbers().keySet()).contains(0, 1, 2, 3, 4, 5, 6, 7);
    }

    @Test
    void aCardThatIsNoneToWorkByHasNoChartToWorkByEither() throws IOException {
        FactorCard lapsed = Cards.in(CardState.LAPSED, Cards.training("0.3", false));
        byte[] pdf = pdf(look(CardSize.A6, PaperLanguage.ENGLISH), lapsed);
        assertThat(PageText.across(pdf)).isEqualTo("LAPSEDLAPSED");
        assertThat(back(pdf)).contains("TW-214");
        assertThat(PageText.runs(pdf).stream().filter(run -> run.page() == 2).map(PageText.Run::text))
                .contains("SIMULATED");
    }

    @Test
    void theWalletCardIsRefused() {
        assertThatThrownBy(() -> pdf(look(CardSize.WALLET, PaperLanguage.ENGLISH), Cards.usual()))
                .isInstanceOf(OutputRefused.class)
                .hasMessageContaining("card.chart-too-fine");
        assertThat(folder).isEmptyDirectory();
    }

    /** Where the readings that pass lie where air is reported to half a division, no chart is fine enough for them. */
    @Test
    void aChartThatCouldNotBeReadFinelyEnoughIsRefused() {
        FactorCard high = Cards.card("0.3", "9.2", "0.3", "0.1", "10");
        assertThatThrownBy(() -> pdf(look(CardSize.A6, PaperLanguage.ENGLISH), Cards.usual(), high))
                .hasMessageContaining("card.chart-too-fine");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void withoutAChartNothingChanges() throws IOException {
        byte[] with = pdf(look(CardSize.A6, PaperLanguage.ENGLISH), Cards.usual());
        byte[] without = pdf(CardLook.of(CardSize.A6, PaperLanguage.ENGLISH), Cards.usual());
        List<PageText.Run> front =
                PageText.runs(with).stream().filter(run -> run.page() == 1).toList();
        assertThat(front).isEqualTo(PageText.runs(without));
    }

    // A record's own words: the size, two languages, the chart, the sheet.
    @Test
    void thePaperThatIsRecordedNamesTheChart() {
        CardLook look = new CardLook(
                CardSize.A6,
                List.of(PaperLanguage.ENGLISH, PaperLanguage.FRENCH),
                Optional.of(CardLook.Sheet.A4),
                2,
                true);
        assertThat(look.form()).isEqualTo("A6 en+fr with chart on A4");
        assertThat(look.withChart(false).form()).isEqualTo("A6 en+fr on A4");
        assertThat(CardLook.of(CardSize.A6, PaperLanguage.ENGLISH)
                        .withChart(true)
                        .form())
                .isEqualTo("A6 with chart");
    }

    @Test
    void aScaleHasItsMarksAtMultiplesOfItsGraduation() {
        assertThat(axis("-1", "0.25", "0.5")).containsExactly("-1.0", "-0.5", "0.0");
        assertThat(axis("0.3", "0.55", "0.1")).containsExactly("0.3", "0.4", "0.5");
    }

    private static List<String> axis(String from, String to, String graduation) {
        return new porebench.evidence.paper.CardChart.Scale(
                        new BigDecimal(from), new BigDecimal(to), new BigDecimal(graduation), 1)
                .marks().stream().map(BigDecimal::toPlainString).toList();
    }
}
