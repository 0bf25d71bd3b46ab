package porebench.desk.factor;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import javax.swing.JPanel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.DeskModel;
import porebench.desk.HeldTasks;
import porebench.desk.Named;
import porebench.desk.form.WrappedText;
import porebench.evidence.CardState;
import porebench.evidence.paper.FactorCard;
import porebench.port.CardHandout;
import porebench.port.Paper;
import porebench.record.column.FactorIssueColumns;

/** The card as it will be, seen before its revision is issued. */
class NextCardTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();
    private FactorModel model;

    @BeforeEach
    void threeTrials() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("T1", 1, DAY, "6.4"));
        bench.keep(BenchBook.trial("T2", 1, DAY, "6.4"), BenchBook.trial("T3", 1, DAY, "6.4"));
        bench.select();
        model = new FactorModel(bench.desk);
        bench.desk.onChange(model::follow);
    }

    private void type(String from) {
        model.update("days", model.draft().with(FactorIssueColumns.IN_FORCE_FROM, from));
    }

    @Test
    void beforeTheFirstIssueTheCardToComeIsShownMarkedAsNotIssued() {
        FactorCard card = model.card().orElseThrow();
        assertThat(model.isNext()).isTrue();
        assertThat(card.issue().revision()).isEqualTo(1);
        assertThat(card.issue().factorPercent()).isEqualByComparingTo("0.4");
        assertThat(card.state()).isEqualTo(CardState.NOT_ISSUED);
        assertThat(card.isMarked()).isTrue();
        assertThat(model.isCardCurrent()).isFalse();
        assertThat(model.prints()).isEmpty();
    }

    @Test
    void itFollowsWhatIsTyped() {
        type("2026-04-01");
        assertThat(model.card().orElseThrow().issue().inForceFrom()).isEqualTo("2026-04-01");
        type("2026-04-");
        assertThat(model.card()).isEmpty();
        type("2029-04-01");
        assertThat(model.card()).as("it would begin after its recheck").isEmpty();
    }

    @Test
    void whileACardIsDrawnNobodyReadsThatThereIsNone() {
        bench.keep(BenchBook.issue(1, 1, DAY, "0.4"));
        HeldTasks held = new HeldTasks();
        DeskModel desk = new DeskModel(held.in(bench.desk.tools()), bench.book);
        FactorModel slow = new FactorModel(desk);
        desk.onChange(slow::follow);
        CardPanel panel = new CardPanel(desk, slow, new FactorActions(desk, slow, new JPanel(), cards -> {}), () -> {});
        panel.refresh();
        WrappedText instead = Named.in(panel, WrappedText.class, "card.instead");
        assertThat(instead.getText()).isNotEmpty();
        desk.select(bench.desk.selected().orElseThrow());
        while (held.count() > 0) {
            held.end();
        }
        panel.refresh();
        assertThat(slow.card()).isPresent();
        assertThat(held.count()).isEqualTo(1);
        assertThat(instead.getText()).isEmpty();
    }

    @Test
    void noDoorLetsItOut() {
        CardHandout.Wish wish = model.wish(Paper.A6, true, "for a test");
        var answer = new CardHandout(bench.book, bench.desk.tools().press(), Locale.ENGLISH).toPrinter(wish);
        assertThat(answer.orElseThrow().value()).isEmpty();
        assertThat(answer.orElseThrow().problems())
                .extracting(problem -> problem.code())
                .containsExactly("issue.none-in-force");
        FactorActions actions = new FactorActions(bench.desk, model, new JPanel(), cards -> {});
        actions.refresh();
        assertThat(actions.print.isEnabled()).isFalse();
        assertThat(actions.savePdf.isEnabled()).isFalse();
    }

    @Test
    void onceARevisionStandsItsCardIsShownUntilTheOneToComeIsWanted() {
        bench.keep(BenchBook.issue(1, 1, DAY, "0.4"));
        bench.desk.refresh();
        assertThat(model.isNext()).isFalse();
        assertThat(model.looked()).isPresent();
        model.lookAtNext();
        assertThat(model.looked()).isEmpty();
        assertThat(model.card().orElseThrow().issue().revision()).isEqualTo(2);
        model.lookAtIssued();
        assertThat(model.card().orElseThrow().issue().revision()).isEqualTo(1);
        type("2026-04-01");
        assertThat(model.isNext()).as("who prepares a revision sees its card").isTrue();
    }

    @Test
    void aNewerDeterminationThatCountsIsWhatIsAboutToBeIssued() {
        bench.keep(BenchBook.issue(1, 1, DAY, "0.4"));
        bench.keep(BenchBook.determination(2, DAY));
        bench.keep(BenchBook.trial("T7", 2, DAY, "6.6"), BenchBook.trial("T8", 2, DAY, "6.6"));
        bench.desk.refresh();
        assertThat(new FactorModel(bench.desk).isNext())
                .as("three are asked for")
                .isFalse();
        bench.keep(BenchBook.trial("T9", 2, DAY, "6.6"));
        bench.desk.refresh();
        FactorModel again = new FactorModel(bench.desk);
        assertThat(again.isNext()).isTrue();
        assertThat(again.card().orElseThrow().issue().factorPercent()).isEqualByComparingTo("0.6");
    }
}
