package porebench.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.FieldSheet;
import porebench.evidence.paper.PaperLanguage;
import porebench.evidence.paper.Printed;
import porebench.method.MeterType;
import porebench.port.OutputFile;
import porebench.port.Paper;
import porebench.port.Waiting;
import porebench.record.book.Progress;

/** Every kind of printed page is a PDF/A-2b (ISO 19005-2), as an independent validator sees it. */
class LastingPdfTest {
    @TempDir
    Path folder;

    @BeforeAll
    static void beginValidator() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    /** Returns the rules that a document breaks: their clauses and words. */
    private static List<String> broken(byte[] pdf) throws Exception {
        try (PDFAParser parser =
                Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFA_2_B)) {
            PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_2_B, false);
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() != TestAssertion.Status.PASSED)
                    .map(assertion -> assertion.getRuleId().getClause() + " " + assertion.getMessage())
                    .distinct()
                    .toList();
        }
    }

    static Stream<Arguments> pages() {
        return Stream.of(
                Arguments.of(Cards.usual(), Paper.A6),
                Arguments.of(Cards.typeA(Cards.usual()), Paper.CARD_4X6),
                Arguments.of(Cards.everythingLong("-0.35", true), Paper.HALF_LETTER),
                Arguments.of(Cards.usual(), Paper.WALLET),
                Arguments.of(Cards.in(CardState.LAPSED, Cards.training("0.3", true)), Paper.A6),
                Arguments.of(Cards.named("\"A & B\" <Lab>", "M<1>&2", "it's", "\uD83D\uDE9A", 2), Paper.A6),
                Arguments.of(Plants.usual(12), Paper.A6),
                Arguments.of(Plants.everything(), Paper.CARD_4X6),
                Arguments.of(Plants.training(), Paper.HALF_LETTER),
                Arguments.of(new FieldSheet(Cards.usual()), Paper.A4),
                Arguments.of(Sheets.everythingLong(6), Paper.LETTER),
                Arguments.of(Calibrations.typeA(), Paper.A4),
                Arguments.of(Calibrations.form(MeterType.B), Paper.A4),
                Arguments.of(Registers.usual(20), Paper.A4),
                Arguments.of(Plans.everythingLong(9), Paper.A4));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyPageIsOneToKeep(Printed what, Paper paper) throws Exception {
        assertThat(broken(Presses.pdf(what, paper, Locale.forLanguageTag("es-MX"))))
                .isEmpty();
    }

    @Test
    void soAreManyCardsInTwoLanguagesOnASheet() throws Exception {
        CardLook look = new CardLook(
                CardSize.WALLET,
                List.of(PaperLanguage.ENGLISH, PaperLanguage.GERMAN),
                Optional.of(CardLook.Sheet.A4),
                2);
        Path file = folder.resolve("cards.pdf");
        List<FactorCard> cards = Collections.nCopies(5, Cards.usual());
        try (Waiting waiting = Presses.PRESS.ready(cards, look, new OutputFile(file, false), Progress.UNHEARD)) {
            waiting.release();
        }
        byte[] pdf = Files.readAllBytes(file);
        assertThat(broken(pdf)).isEmpty();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(3);
        }
    }

    /** Parts that stand in the file once are held by every page's own resources. */
    @Test
    void soAreCardsWithMuchInCommon() throws Exception {
        Path file = folder.resolve("alike.pdf");
        List<FactorCard> cards = List.of(
                Cards.usual(), Cards.everythingLong("0.3", true), Cards.usual(), Cards.everythingLong("0.3", true));
        CardLook look = CardLook.of(CardSize.A6, PaperLanguage.ENGLISH);
        try (Waiting waiting = Presses.PRESS.ready(cards, look, new OutputFile(file, false), Progress.UNHEARD)) {
            waiting.release();
        }
        byte[] pdf = Files.readAllBytes(file);
        assertThat(new String(pdf, StandardCharsets.ISO_8859_1)).contains("/Form");
        assertThat(broken(pdf)).isEmpty();
    }

    @Test
    void soAreCardsWithAChartOnTheirBacks() throws Exception {
        CardLook look = new CardLook(
                CardSize.A6,
                List.of(PaperLanguage.FRENCH, PaperLanguage.SPANISH_AMERICAS),
                Optional.of(CardLook.Sheet.A4),
                CardLook.ALL,
                true);
        Path file = folder.resolve("charts.pdf");
        List<FactorCard> cards = List.of(
                Cards.usual(),
                Cards.card("-0.35", "6.0", "1.5", "0.05", "10"),
                Cards.in(CardState.LAPSED, Cards.training("0.3", true)));
        try (Waiting waiting = Presses.PRESS.ready(cards, look, new OutputFile(file, false), Progress.UNHEARD)) {
            waiting.release();
        }
        byte[] pdf = Files.readAllBytes(file);
        assertThat(broken(pdf)).isEmpty();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(4);
        }
    }

    /** The validator is no rubber stamp: without what is said of it the same document is none. */
    @Test
    void aDocumentThatSaysNothingOfItselfIsNone() throws Exception {
        ByteArrayOutputStream without = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(Presses.pdf(Cards.usual(), Paper.A6, Locale.ENGLISH))) {
            document.getDocumentCatalog().setOutputIntents(List.of());
            document.save(without);
        }
        assertThat(broken(without.toByteArray())).singleElement().asString().startsWith("6.2.4.3 DeviceGray");
    }
}
