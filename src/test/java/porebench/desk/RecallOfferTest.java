package porebench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.JPanel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.form.Tasks;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoCards;
import porebench.print.PdfPress;
import porebench.record.CardPrint;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** What is offered of the cards of the demo laboratory: truck 7 has one of HG-101 on a factor that was replaced. */
class RecallOfferTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private final ScriptedAsker asker = new ScriptedAsker();
    private final List<List<String>> opened = new ArrayList<>();
    private RecallOffer offer;

    @BeforeEach
    void openTheDemo() {
        LabBook book = new MemoryLabBook(DAY);
        new DemoCards().fill(book);
        DeskModel desk = new DeskModel(
                new Tools(
                        new SqliteShelf(DAY),
                        new CsvSheets(),
                        new PdfPress("Porebench", DAY, ZoneOffset.UTC),
                        Tasks.direct(),
                        asker,
                        DAY,
                        ZoneOffset.UTC,
                        Locale.ENGLISH),
                book);
        offer = new RecallOffer(desk, JPanel::new, opened::add);
    }

    private static boolean isDeck(MixId mix) {
        return mix.text().equals("HG-101");
    }

    @Test
    void theListIsOfferedWhereCardsHaveToComeBackAndNotElsewhere() {
        offer.afterKeeping(mix -> mix.text().equals("HG-107"));
        assertThat(asker.asked).isEmpty();
        asker.confirmations.add(false);
        offer.afterKeeping(RecallOfferTest::isDeck);
        assertThat(asker.asked).containsExactly("Cards to call back");
        assertThat(opened).isEmpty();
        asker.confirmations.add(true);
        offer.afterKeeping(RecallOfferTest::isDeck);
        assertThat(opened).containsExactly(List.of());
    }

    @Test
    void whoHoldsTheCardsOfAMixIsNamed() {
        List<String> named = new ArrayList<>();
        offer.withOut(new MixId("HG-107"), out -> named.add(offer.names(out)));
        offer.withOut(new MixId("HG-103"), out -> named.add(Integer.toString(out.size())));
        assertThat(named).containsExactly("truck 4 (HG-107/r1/1), T. Alder (HG-107/r1/2)", "0");
    }

    @Test
    void ofACardOnPaperItIsAskedToWhomItGoesAndOfAFileNot() {
        MixId mix = new MixId("HG-101");
        offer.afterPrinting(List.of(new CardPrint(mix, 2, 4, "a6", CardPrint.toFile(Path.of("card.pdf"), false))));
        offer.afterPrinting(List.of(new CardPrint(mix, 2, 4, "a6", CardPrint.toPrinter(true))));
        assertThat(asker.asked).isEmpty();
        CardPrint paper = new CardPrint(mix, 2, 4, "a6", CardPrint.toPrinter(false));
        offer.afterPrinting(List.of(paper));
        assertThat(asker.asked).containsExactly("To whom does the card go?");
        assertThat(opened).isEmpty();
        asker.confirmations.add(true);
        offer.afterPrinting(List.of(paper));
        assertThat(opened).containsExactly(List.of("HG-101/r2/4"));
    }

    /** Of three copies all three are chosen, so that none stays with nobody. */
    @Test
    void ofSeveralCopiesAllAreAskedFor() {
        asker.confirmations.add(true);
        offer.afterPrinting(IntStream.rangeClosed(4, 6)
                .mapToObj(copy -> new CardPrint(new MixId("HG-101"), 2, copy, "a6", CardPrint.toPrinter(false)))
                .toList());
        assertThat(asker.asked).containsExactly("To whom does the card go?");
        assertThat(opened).containsExactly(List.of("HG-101/r2/4", "HG-101/r2/5", "HG-101/r2/6"));
    }
}
