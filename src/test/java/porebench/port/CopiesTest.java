package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.print.attribute.standard.MediaTray;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.Answer;
import porebench.print.DeskPrinter;
import porebench.record.CardPrint;
import porebench.record.Samples;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Copies and tray that a person chooses in the dialog of the printer: what is recorded is what left. */
class CopiesTest {
    private static final LocalDate DAY = Bench.START;

    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void issue() {
        bench = new Bench(folder);
        Books.keep(bench.book, Samples.issue("M-1", 1, "M-1/1", DAY));
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private Answer<CardHandout.Handed> print(DeskPrinter printer) {
        CardHandout.Wish wish = new CardHandout.Wish(
                new MixId("M-1"), Optional.empty(), Paper.A6, true, DAY.atTime(12, 0), "R. Vale", "cards of the day");
        return new CardHandout(bench.book, printer.press(), Locale.ENGLISH)
                .toPrinter(wish)
                .orElseThrow();
    }

    private List<CardPrint> prints() {
        return bench.book.latest(CardPrint.class).stream().map(Version::value).toList();
    }

    @Test
    void everyCopyIsACardOfItsOwnAndTheTrayReachesThePrinter() {
        DeskPrinter printer = new DeskPrinter(true);
        printer.choose(3, MediaTray.MANUAL);
        Answer<CardHandout.Handed> answer = print(printer);
        assertThat(answer.value().orElseThrow().prints())
                .extracting(CardPrint::number)
                .containsExactly(1, 2, 3);
        assertThat(prints())
                .hasSize(3)
                .allMatch(print -> print.way() == CardPrint.Way.HANDED_OUT
                        || print.destination().startsWith("printer"));
        assertThat(printer.fedFrom()).hasValue(MediaTray.MANUAL);
    }

    @Test
    void withoutAChoiceOneCopyLeaves() {
        DeskPrinter printer = new DeskPrinter(true);
        print(printer);
        assertThat(prints()).hasSize(1);
        assertThat(printer.fedFrom()).isEmpty();
    }

    @Test
    void ofCopiesThatDidNotLeaveNoneIsOut() {
        DeskPrinter printer = new DeskPrinter(true);
        printer.breaks();
        printer.choose(2, MediaTray.MAIN);
        Answer<CardHandout.Handed> answer = print(printer);
        assertThat(answer.value()).isEmpty();
        assertThat(prints()).hasSize(2).allMatch(print -> print.way() == CardPrint.Way.NOT_RELEASED);
    }

    /** A card with a chart goes to the printer with its back, and the record says so. */
    @Test
    void aCardWithAChartIsPrintedOnBothSides() {
        DeskPrinter printer = new DeskPrinter(true);
        CardHandout.Wish wish = new CardHandout.Wish(
                new MixId("M-1"), Optional.empty(), Paper.A6, true, DAY.atTime(12, 0), "R. Vale", "cards of the day");
        CardLook look = CardLook.of(CardSize.CARD_4X6, PaperLanguage.ENGLISH).withChart(true);
        Answer<CardHandout.Handed> answer = new CardHandout(bench.book, printer.press(), Locale.ENGLISH)
                .toPrinter(wish, look)
                .orElseThrow();
        assertThat(answer.value().orElseThrow().print().paper()).isEqualTo("4x6in with chart");
        assertThat(printer.printed()).isEqualTo(2);
        assertThat(prints())
                .singleElement()
                .satisfies(print -> assertThat(print.destination()).startsWith("printer"));
    }
}
