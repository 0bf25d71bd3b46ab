package porebench.desk.factor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.DeskModel;
import porebench.desk.ScriptedAsker;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoCards;
import porebench.print.PdfPress;
import porebench.record.FactorIssue;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** A factor of the demo laboratory is withdrawn while two of its cards are out. */
class FactorCardsOutTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private final List<String> whys = new ArrayList<>();
    private final ScriptedAsker asker = new ScriptedAsker() {
        @Override
        public Optional<String> reason(JComponent over, String title, String question, String actName) {
            whys.add(question);
            return super.reason(over, title, question, actName);
        }
    };
    private final LabBook book = new MemoryLabBook(DAY);
    private final List<List<String>> opened = new ArrayList<>();
    private DeskModel desk;
    private FactorActions actions;

    @BeforeEach
    void openTheDemo() {
        new DemoCards().fill(book);
        desk = new DeskModel(
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
        asker.serve(desk);
        desk.setPerson("M. Quist");
    }

    private void withdraw(String mix, boolean goesToTheCards) {
        desk.select(new MixId(mix));
        FactorModel model = new FactorModel(desk);
        actions = new FactorActions(desk, model, new JPanel(), opened::add);
        asker.reasons.add("the stone is gone");
        asker.confirmations.add(goesToTheCards);
        actions.withdraw.actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, ""));
        assertThat(asker.problemsShown).isEmpty();
    }

    @Test
    void whoHoldsTheCardsIsSaidBeforeAndTheListOfferedAfterwards() {
        withdraw("HG-107", true);
        assertThat(whys)
                .singleElement()
                .satisfies(question -> assertThat(question)
                        .contains("Cards of this mix that are out: truck 4 (HG-107/r1/1), T. Alder (HG-107/r1/2)."));
        assertThat(book.latest(FactorIssue.class, "HG-107/r2")
                        .orElseThrow()
                        .value()
                        .isIssue())
                .isFalse();
        assertThat(asker.asked).contains("Cards to call back");
        assertThat(opened).containsExactly(List.of());
        assertThat(LookedCard.out(desk).orElseThrow()).hasSize(2).allMatch(card -> card.isToComeBack());
    }

    @Test
    void withoutCardsOutNothingIsNamedAndNothingOffered() {
        withdraw("HG-103", true);
        assertThat(whys).containsExactly("Why is the factor withdrawn? From today no crew may subtract it.");
        assertThat(opened).isEmpty();
        assertThat(LookedCard.out(desk)).isEmpty();
    }

    @Test
    void whoDoesNotWantToGoToTheCardsStays() {
        withdraw("HG-107", false);
        assertThat(asker.asked).contains("Cards to call back");
        assertThat(opened).isEmpty();
    }
}
