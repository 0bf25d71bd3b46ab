package porebench.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.CardState;
import porebench.evidence.paper.FieldList;
import porebench.evidence.paper.FieldSheet;
import porebench.evidence.paper.Printed;
import porebench.evidence.paper.RegisterList;
import porebench.evidence.paper.SampleLabels;
import porebench.evidence.paper.TrialSheet;
import porebench.method.Languages;
import porebench.method.MeterType;
import porebench.port.Paper;

/** Nothing on a page is cut off or overprinted, whatever the names and figures are. */
class PageGeometryTest {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    static Stream<Arguments> pages() {
        List<Arguments> pages = new ArrayList<>();
        for (Paper paper : List.of(Paper.A6, Paper.CARD_4X6)) {
            cards().forEach(card -> pages.add(Arguments.of(card, paper, 6 * POINTS_PER_MILLIMETRE)));
        }
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            sheets().forEach(sheet -> pages.add(Arguments.of(sheet, paper, 14 * POINTS_PER_MILLIMETRE)));
        }
        return pages.stream();
    }

    private static Stream<Printed> cards() {
        return Stream.of(
                Cards.usual(),
                Cards.wetSieved(Cards.usual()),
                Cards.card("-0.2", "6.0", "1.5", "0.1", "10"),
                Cards.card("-12.25", "6.00", "1.50", "0.125", "30"),
                Cards.card("0.3", "6.0", "0.0", "0.25", "10"),
                Cards.card("0.3", "20", "1.0", "0.1", "10"),
                Cards.card("0.45", "5.5", "2.0", "0.02", "12"),
                Cards.card("0.3", "6.5", "1.5", "0.01", "100"),
                Cards.card("0.3", "6.5", "1.5", "5", "3"),
                Cards.card("1.25", "8.0", "7.5", "0.1", "15"),
                Cards.everythingLong("0.3", false),
                Cards.everythingLong("-0.35", true),
                Cards.typeA(Cards.usual()),
                Cards.typeA(Cards.everythingLong("-0.35", true)),
                Cards.in(CardState.NOT_YET, Cards.usual()),
                Cards.in(CardState.EVIDENCE_CHANGED, Cards.everythingLong("-0.35", true)),
                Cards.in(CardState.LAPSED, Cards.training("-0.35", true)),
                Cards.takenOn(Cards.everythingLong("-0.35", true), Cards.LONG_TITLE, "M. Ash", "R. Vale", "T. Oak"),
                Cards.under(Cards.usual(), "only with sand Alder; not for pumped mixes"),
                Cards.under(Cards.everythingLong("-0.35", true), Cards.WIDEST_CONDITIONS),
                Cards.under(
                        Cards.takenOn(Cards.training("-0.35", true), Cards.LONG_TITLE, "M. Ash", "R. Vale", "T. Oak"),
                        Cards.WIDEST_CONDITIONS),
                Cards.training("0.3", false),
                Cards.training("-0.35", true),
                Plants.usual(1),
                Plants.usual(5),
                Plants.usual(30),
                Plants.everything(),
                Plants.training());
    }

    private static Stream<Printed> sheets() {
        return Stream.of(
                Sheets.usual(1),
                Sheets.usual(3),
                Sheets.typeA(6),
                Sheets.us(4),
                Sheets.us(19),
                Sheets.everythingLong(3),
                Sheets.everythingLong(100),
                Sheets.training(7),
                Calibrations.typeB(),
                Calibrations.failed(),
                Calibrations.typeA(),
                Calibrations.note(),
                Calibrations.unusable(),
                Calibrations.everythingLong(),
                Calibrations.training(),
                Calibrations.form(MeterType.A),
                Calibrations.form(MeterType.B),
                Calibrations.formForAnyMeter(MeterType.A, Calibrations.Laboratories.LONG),
                Calibrations.formForAnyMeter(MeterType.B, Calibrations.Laboratories.TRAINING),
                Registers.usual(3),
                Registers.everythingLong(9),
                Registers.training(),
                Registers.empty(),
                Plans.usual(5),
                Plans.everythingLong(9),
                Plans.training(),
                Plans.empty(),
                FieldLists.usual(30),
                FieldLists.everythingLong(9),
                FieldLists.training(),
                FieldLists.empty(),
                new SampleLabels(Sheets.usual(3), LocalDate.of(2026, 11, 29)),
                new SampleLabels(Sheets.everythingLong(9), LocalDate.of(2026, 11, 29)),
                new SampleLabels(Sheets.training(3), LocalDate.of(2026, 11, 29)),
                Recalls.usual(3),
                Recalls.everythingLong(9),
                Recalls.training(),
                Recalls.empty(),
                Recalls.ofTruck(),
                new FieldSheet(Cards.usual()),
                new FieldSheet(Cards.everythingLong("-0.35", true)),
                new FieldSheet(Cards.in(CardState.LAPSED, Cards.training("0.3", true))));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everythingStandsInsideTheMarginsAndNoTwoTextsOverlapInAnyLanguage(Printed what, Paper paper, double margin) {
        boolean lies = what instanceof RegisterList || what instanceof FieldList;
        for (Locale language : Languages.ALL) {
            byte[] pdf = Presses.pdf(what, paper, language);
            assertInside(pdf, paper, margin, lies);
            assertApart(pdf);
        }
    }

    @Test
    void namesOfAnyLengthFit() {
        Random random = new Random(214);
        for (int round = 0; round < 40; round++) {
            // A mix whose name the typeface cannot show has no card at all.
            String mix = words(random, 70).replaceAll("[\u4e2d\u0627]", "W");
            Printed card =
                    Cards.named(words(random, 130), mix, words(random, 400), words(random, 90), random.nextInt(12));
            byte[] pdf = Presses.pdf(card, Paper.CARD_4X6, Locale.ENGLISH);
            assertInside(pdf, Paper.CARD_4X6, 6 * POINTS_PER_MILLIMETRE, false);
            assertApart(pdf);
        }
    }

    /** Words of 1 to 40 letters, up to a number of characters, with accents and characters the typeface lacks. */
    private static String words(Random random, int most) {
        String letters = "aeiounrstlmWMQ\u00c4\u00e7\u0158\u0416\u4e2d\u0627-/.";
        StringBuilder text = new StringBuilder("x");
        int length = 1 + random.nextInt(most);
        int word = 1 + random.nextInt(40);
        while (text.length() < length) {
            text.append(word-- == 0 ? ' ' : letters.charAt(random.nextInt(letters.length())));
            word = word < 0 ? 1 + random.nextInt(40) : word;
        }
        return text.toString();
    }

    /**
     * Holds a PDF against its paper.
     *
     * @param lies whether the paper lies on its long side
     */
    private static void assertInside(byte[] pdf, Paper paper, double margin, boolean lies) {
        double shortSide = paper.widthMillimetres() * POINTS_PER_MILLIMETRE;
        double longSide = paper.heightMillimetres() * POINTS_PER_MILLIMETRE;
        double width = lies ? longSide : shortSide;
        double height = lies ? shortSide : longSide;
        assertThat(PageText.runs(pdf)).isNotEmpty().allSatisfy(run -> {
            assertThat(run.left()).isGreaterThan(margin - 0.1);
            assertThat(run.right()).isLessThan(width - margin + 0.1);
            assertThat(run.top()).isGreaterThan(margin - 0.1);
            assertThat(run.bottom()).isLessThan(height - margin + 0.1);
        });
    }

    private static void assertApart(byte[] pdf) {
        List<PageText.Run> runs =
                PageText.runs(pdf).stream().filter(run -> !run.text().isBlank()).toList();
        for (int one = 0; one < runs.size(); one++) {
            for (int two = one + 1; two < runs.size(); two++) {
                assertThat(runs.get(one).overlaps(runs.get(two)))
                        .as("%s over %s", runs.get(one), runs.get(two))
                        .isFalse();
            }
        }
    }

    // A6 and A4 of ISO 216 in millimetres, the others in inches; an inch is 25.4 mm and 72 points.
    @ParameterizedTest
    @CsvSource({"A6,297.6378,419.5276", "CARD_4X6,288,432", "A4,595.2756,841.8898", "LETTER,612,792"})
    void pagesHaveTheExactSizeOfThePaper(Paper paper, double width, double height) throws IOException {
        Printed what = paper == Paper.A6 || paper == Paper.CARD_4X6 ? Cards.usual() : Sheets.usual(3);
        try (PDDocument document = Loader.loadPDF(Presses.pdf(what, paper, Locale.ENGLISH))) {
            for (PDPage page : document.getPages()) {
                PDRectangle box = page.getMediaBox();
                assertThat((double) box.getWidth()).isEqualTo(width, within());
                assertThat((double) box.getHeight()).isEqualTo(height, within());
            }
            assertThat(document.getNumberOfPages()).isEqualTo(what instanceof TrialSheet ? 2 : 1);
        }
    }

    @Test
    void aRegisterLiesOnItsLongSideAndGoesOnOverPages() throws IOException {
        try (PDDocument document = Loader.loadPDF(Presses.pdf(Registers.usual(60), Paper.A4, Locale.ENGLISH))) {
            assertThat(document.getNumberOfPages()).isGreaterThan(2);
            for (PDPage page : document.getPages()) {
                assertThat((double) page.getMediaBox().getWidth()).isEqualTo(841.8898, within());
                assertThat((double) page.getMediaBox().getHeight()).isEqualTo(595.2756, within());
            }
        }
    }

    @Test
    void aRegisterSaysEveryMixAndWhatItLacks() {
        String text = Presses.text(Registers.usual(9), Paper.A4, Locale.ENGLISH);
        assertThat(text)
                .contains("4 of 14 mixes have a factor that may be used.")
                .contains("Printed are 9 of 14 mixes")
                .contains("HG-101", "HG-109", "in force", "source changed")
                .contains("Trial B-0007 was corrected after the issue.")
                .contains("3f2a-91c0-77de-0b1c");
    }

    @Test
    void aPlanSaysWhichMixesAndWhatToFetchNeverLessThanItIs() {
        String text = Presses.text(Plans.usual(5), Paper.A4, Locale.ENGLISH);
        assertThat(text)
                .contains("Tests from 2026-11-28 to 2026-12-04")
                .contains("HG-101", "HG-105", "never had a factor", "recheck due")
                .contains("Cards handed out: 3. Ask the crews to stop using them.")
                .contains("No meter can be trusted: Bridge deck")
                .contains("1 more mixes need a test")
                .contains("25.1")
                .doesNotContain("25.0");
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(1e-3);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void allFontsAreEmbeddedAsSubsets(Printed what, Paper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(Presses.pdf(what, paper, Locale.ENGLISH))) {
            for (PDPage page : document.getPages()) {
                assertThat(page.getResources().getFontNames()).isNotEmpty();
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                    assertThat(font.getName()).matches("[A-Z]{6}\\+Roboto-(Regular|Bold)");
                }
            }
        }
    }
}
