package porebench.desk.custody;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.desk.DeskModel;
import porebench.desk.ScriptedAsker;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.evidence.paper.SealedTexts;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoCards;
import porebench.exchange.DemoTexts;
import porebench.method.Problem;
import porebench.print.PdfPress;
import porebench.record.Laboratory;
import porebench.record.book.MemoryLabBook;
import porebench.store.SqliteShelf;

/** Texts of the demo laboratory's cards on 25 November 2026, without a display. */
class TextCheckModelTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private final MemoryLabBook book = new MemoryLabBook(DAY);
    private int told;

    private TextCheckModel model(Locale locale) {
        DeskModel desk = new DeskModel(
                new Tools(
                        new SqliteShelf(DAY),
                        new CsvSheets(),
                        new PdfPress("Porebench", DAY, ZoneOffset.UTC),
                        Tasks.direct(),
                        new ScriptedAsker(),
                        DAY,
                        ZoneOffset.UTC,
                        locale),
                book);
        return new TextCheckModel(desk);
    }

    private TextCheckModel checked(Locale locale, String text) {
        TextCheckModel model = model(locale);
        model.text(text);
        model.check(() -> told++);
        return model;
    }

    private static List<String> codes(TextCheckModel model) {
        return model.problems().stream().map(Problem::code).toList();
    }

    @Test
    void theTextOfACardInForceIsGood() {
        new DemoCards().fill(book);
        TextCheckModel model = checked(Locale.ENGLISH, DemoTexts.of(book, "HG-101", 2, DAY));
        assertThat(told).isEqualTo(1);
        assertThat(model.verdict()).startsWith("Unaltered:");
        assertThat(model.names())
                .startsWith("It names HG-101/r2: G 0.")
                .contains("today: in force", "Copies that left: 3");
        assertThat(model.isGood()).isTrue();
        assertThat(model.problems()).isEmpty();
    }

    @Test
    void theTextOfAReplacedRevisionIsUnalteredButNoCardToWorkBy() {
        new DemoCards().fill(book);
        TextCheckModel model = checked(Locale.forLanguageTag("es-MX"), DemoTexts.of(book, "HG-101", 1, DAY));
        assertThat(model.verdict()).startsWith("Sin alterar:");
        assertThat(model.names()).contains("HG-101/r1", "reemplazada");
        assertThat(model.isGood()).isFalse();
        assertThat(codes(model)).contains("issue.not-usable");
    }

    @Test
    void anAlteredTextIsNamedAndItsLine() {
        new DemoCards().fill(book);
        String text = DemoTexts.of(book, "HG-101", 2, DAY);
        TextCheckModel model = checked(Locale.ENGLISH, text.replace("SUBTRACT 0.", "SUBTRACT 1."));
        assertThat(model.verdict()).startsWith("Altered:");
        assertThat(model.isGood()).isFalse();
        assertThat(codes(model)).contains("cardcheck.altered", "cardcheck.line-gone", "cardcheck.line-added");
        // Other words are another text: what was found is of the one before.
        model.text(text);
        assertThat(model.verdict()).isEmpty();
        assertThat(model.names()).isEmpty();
        assertThat(model.problems()).isEmpty();
    }

    @Test
    void whatIsNoTextOfACardOfThisBookIsSaidToBeThat() {
        new DemoCards().fill(book);
        String text = DemoTexts.of(book, "HG-101", 2, DAY);
        assertThat(checked(Locale.ENGLISH, text.replace("/r2]", "/r9]")).verdict())
                .startsWith("Unknown:");
        assertThat(checked(Locale.ENGLISH, "SUBTRACT 0.3").verdict()).startsWith("No check code:");
        TextCheckModel blank = checked(Locale.ENGLISH, "  ");
        assertThat(blank.verdict()).isEmpty();
        assertThat(codes(blank)).containsExactly("cardcheck.blank");
        assertThat(told).isEqualTo(3);
        assertThat(blank.names()).isEmpty();
    }

    @Test
    void theTextOfATrainingBookIsNoCardToWorkBy() {
        new DemoCards().fill(book);
        String text = DemoTexts.of(book, "HG-101", 2, DAY);
        Laboratory laboratory = new Laboratory("Practice", "", true);
        book.holdAsBefore(laboratory);
        TextCheckModel model = checked(Locale.ENGLISH, text);
        assertThat(model.verdict()).startsWith("Of training:");
        assertThat(model.isGood()).isFalse();
    }

    /** On a plant's card stand HG-101 revision 1, which was replaced, and HG-102 revision 1: both are named, and why not to work by it. */
    @Test
    void theTextOfAPlantsCardNamesAllItsRevisionsAndTheOneThatNoLongerHolds() {
        new DemoCards().fill(book);
        String text = SealedTexts.of(book, "Plant Hollin\ntwo rows", "HG-102/r1", "HG-101/r1");
        TextCheckModel model = checked(Locale.ENGLISH, text);
        assertThat(model.verdict()).startsWith("Unaltered:");
        assertThat(model.names())
                .startsWith("It names HG-101/r1:")
                .contains("replaced", "On the same card: HG-102/r1.");
        assertThat(model.isGood()).isFalse();
        assertThat(codes(model)).contains("issue.not-usable");
        // Of an altered one no line is named: the program does not write it anew.
        assertThat(codes(checked(Locale.ENGLISH, text.replace("two rows", "six rows"))))
                .contains("cardcheck.altered")
                .noneMatch(code -> code.startsWith("cardcheck.line"));
    }
}
