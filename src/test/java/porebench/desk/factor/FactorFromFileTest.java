package porebench.desk.factor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.DeskModel;
import porebench.desk.Refused;
import porebench.desk.ScriptedAsker;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.desk.form.TypedDraft;
import porebench.evidence.issue.IssueDoubt;
import porebench.exchange.CsvSheets;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.print.PdfPress;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.book.Stamp;
import porebench.record.column.FactorIssueColumns;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.store.Books;

/** What the page proposes for the next revision, and how a factor from a file is confirmed; today is 2026-03-02. */
class FactorFromFileTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private LabBook book;
    private DeskModel desk;

    @BeforeEach
    void open() {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                Samples.meter("B-1", MeterType.B),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.determination("M-1/1", "M-1"));
        desk = new DeskModel(
                new Tools(
                        Books.SHELF,
                        new CsvSheets(),
                        new PdfPress("Porebench test", Books.CLOCK, ZoneOffset.UTC),
                        Tasks.direct(),
                        new ScriptedAsker(),
                        Books.CLOCK,
                        ZoneOffset.UTC,
                        Locale.ENGLISH),
                book);
        desk.setPerson("R. Vale");
    }

    @AfterEach
    void close() {
        book.close();
    }

    private void trials(String determination, String... gauges) {
        for (int i = 0; i < gauges.length; i++) {
            Books.keep(book, Samples.trial("T-" + determination + i, "M-1", determination, gauges[i]));
        }
    }

    /** A factor of 0.4 that came in from a file, resting on what the book has. */
    private void imported(String determination) {
        Books.keep(
                book,
                Samples.issue("M-1", 1, determination, TODAY)
                        .restingOn(1, Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1))
                        .on(Grounds.NONE.from(FactorOrigin.IMPORTED)));
    }

    private FactorModel model() {
        desk.refresh();
        desk.select(new MixId("M-1"));
        FactorModel model = new FactorModel(desk);
        desk.onChange(model::follow);
        model.follow();
        return model;
    }

    private static void fill(FactorModel model, String reason) {
        TypedDraft draft = model.history()
                .draft()
                .with(FactorIssueColumns.REASON, reason)
                .with(FactorIssueColumns.OVERRIDE_BY, "M. Ash")
                .with(FactorIssueColumns.OVERRIDE_REASON, "looked at");
        for (IssueDoubt doubt : model.doubts()) {
            draft = draft.with(FactorModel.taken(doubt), true);
        }
        model.history().update("reason", draft);
    }

    @Test
    void theNewestDeterminationInWhichTrialsCountIsProposed() {
        Books.keep(book, Samples.determination("M-1/2", "M-1"));
        assertThat(model().history().draft().text(FactorModel.DETERMINATION)).isEqualTo("M-1/2");
        trials("M-1/1", "5.4");
        assertThat(model().history().draft().text(FactorModel.DETERMINATION)).isEqualTo("M-1/1");
        trials("M-1/2", "5.4");
        assertThat(model().history().draft().text(FactorModel.DETERMINATION)).isEqualTo("M-1/2");
    }

    @Test
    void aFactorFromAFileIsProposedToBeConfirmedOnItsOwnDetermination() {
        Books.keep(book, Samples.determination("M-1/2", "M-1"));
        trials("M-1/1", "5.4", "5.4", "5.4");
        trials("M-1/2", "5.4");
        assertThat(model().confirmable()).isEmpty();
        imported("M-1/1");
        FactorModel model = model();
        assertThat(model.history().draft().text(FactorModel.DETERMINATION)).isEqualTo("M-1/1");
        assertThat(model.confirmable())
                .map(version -> version.value().revision())
                .contains(1);
        model.type(FactorModel.DETERMINATION, "M-1/2");
        assertThat(model.chosen())
                .map(judged -> judged.determination().value().id().text())
                .contains("M-1/2");
        assertThat(model.confirmable()).isEmpty();
    }

    @Test
    void itIsConfirmedWithItsDoubtsTakenOnAndThenNothingIsLeftToConfirm() {
        trials("M-1/1", "5.4", "5.4", "5.4");
        imported("M-1/1");
        FactorModel model = model();
        assertThat(model.needsOverride()).isTrue();
        assertThat(Refused.by(out -> model.confirm(out)))
                .extracting(Problem::code)
                .contains("form.required");
        assertThat(book.latest(FactorIssue.class, "M-1/r1")
                        .orElseThrow()
                        .value()
                        .origin())
                .isEqualTo(FactorOrigin.IMPORTED);
        fill(model, " trials seen ");
        assertThat(Refused.by(out -> model.confirm(out))).isEmpty();
        assertThat(book.latest(FactorIssue.class, "M-1/r1")
                        .orElseThrow()
                        .value()
                        .origin())
                .isEqualTo(FactorOrigin.CONFIRMED);
        Stamp stamp = book.latest(FactorIssue.class, "M-1/r1").orElseThrow().stamp();
        assertThat(stamp.who()).isEqualTo("R. Vale");
        assertThat(stamp.why()).isEqualTo("trials seen");
        assertThat(model.confirmable()).isEmpty();
    }

    @Test
    void theNextRevisionBeginsTodayOrWithTheOneBefore() {
        trials("M-1/1", "5.4", "5.4", "5.4");
        assertThat(model().history().draft().text(FactorIssueColumns.IN_FORCE_FROM))
                .isEqualTo("2026-03-02");
        assertThat(model().canWithdraw()).isFalse();
        Books.keep(book, Samples.issue("M-1", 1, "M-1/1", TODAY.minusDays(1)));
        assertThat(model().history().draft().text(FactorIssueColumns.IN_FORCE_FROM))
                .isEqualTo("2026-03-02");
        assertThat(model().canWithdraw()).isTrue();
        Books.keep(book, Samples.issue("M-1", 2, "M-1/1", TODAY.plusDays(9)));
        FactorModel model = model();
        assertThat(model.history().draft().text(FactorIssueColumns.IN_FORCE_FROM))
                .isEqualTo("2026-03-11");
        assertThat(model.history().draft().text(FactorIssueColumns.RECHECK_BY)).isEqualTo("2027-03-11");
    }

    @Test
    void whatALabBookRefusesIsSaid() {
        trials("M-1/1", "5.4", "5.4", "5.4");
        FactorModel model = model();
        fill(model, "first");
        Books.correct(book, Samples.trial("T-M-1/10", "M-1", "M-1/1", "5.5"));
        List<Problem> said = Refused.by(out -> model.issue(out));
        assertThat(said).extracting(Problem::code).contains("issue.evidence-changed-meanwhile");
        assertThat(book.latest(FactorIssue.class)).isEmpty();
    }

    @Test
    void aWithdrawalNeedsAReasonAndSomethingToWithdraw() {
        trials("M-1/1", "5.4", "5.4", "5.4");
        assertThat(Refused.by(out -> model().withdraw("pit closed", out)))
                .extracting(Problem::code)
                .containsExactly("issue.nothing-to-withdraw");
        Books.keep(book, Samples.issue("M-1", 1, "M-1/1", TODAY));
        FactorModel model = model();
        assertThat(Refused.by(out -> model.withdraw(" ", out)))
                .extracting(Problem::code)
                .containsExactly("form.required");
        assertThat(Refused.by(out -> model.withdraw("pit\u202E closed", out))).isNotEmpty();
        assertThat(model.canWithdraw()).isTrue();
        assertThat(Refused.by(out -> model.withdraw("pit closed", out))).isEmpty();
        assertThat(model.canWithdraw()).isFalse();
    }

    @Test
    void aFactorIssuedHereDoesNotKeepANewerDeterminationFromBeingProposed() {
        trials("M-1/1", "5.4", "5.4", "5.4");
        Books.keep(book, Samples.issue("M-1", 1, "M-1/1", TODAY));
        FactorModel model = model();
        assertThat(model.history().draft().text(FactorModel.DETERMINATION)).isEqualTo("M-1/1");
        Books.keep(book, Samples.determination("M-1/2", "M-1"));
        trials("M-1/2", "5.4");
        desk.refresh();
        assertThat(model.history().draft().text(FactorModel.DETERMINATION)).isEqualTo("M-1/2");
    }

    @Test
    void whatWasTakenBackCanBeDoneAgainAfterSomebodyElseKeptSomething() {
        trials("M-1/1", "5.4", "5.4", "5.4");
        FactorModel model = model();
        model.history().update("reason", model.history().draft().with(FactorIssueColumns.REASON, "first factor"));
        model.history().undo();
        Books.keep(book, Samples.source("S-3", Role.FINE, "1"));
        desk.refresh();
        model.history().redo();
        assertThat(model.history().draft().text(FactorIssueColumns.REASON)).isEqualTo("first factor");
    }

    /** The doubts have boxes of their own, and who issues is asked for when it is done. */
    @Test
    void theFormDoesNotSayTwiceWhatStandsBesideItsBoxes() {
        trials("M-1/1", "5.4", "5.4", "5.4");
        FactorModel model = model();
        assertThat(model.doubts()).isNotEmpty();
        assertThat(model.problems())
                .doesNotContainAnyElementsOf(
                        model.doubts().stream().map(IssueDoubt::asSaid).toList());
        fill(model, "first factor");
        desk.setPerson("");
        assertThat(Refused.by(out -> model.issue(out)))
                .extracting(Problem::field)
                .contains("issuedBy");
        assertThat(model.problems()).extracting(Problem::field).doesNotContain("issuedBy");
    }

    @Test
    void whereNothingIsDoubtfulNobodyNeedsToTakeDoubtsOn() {
        FactorModel model = model();
        desk.selectNone();
        assertThat(model.doubts()).isEmpty();
        assertThat(model.needsOverride()).isFalse();
        assertThat(model.canIssue()).isFalse();
    }

    @Test
    void everyRevisionHasCardsOfItsOwn() {
        trials("M-1/1", "5.4", "5.4", "5.4");
        Books.keep(
                book,
                Samples.issue("M-1", 1, "M-1/1", TODAY),
                Samples.issue("M-1", 2, "M-1/1", TODAY),
                Samples.mix("M-2", "S-1", "S-2"),
                new CardPrint(new MixId("M-1"), 1, 1, "A6", "first"),
                new CardPrint(new MixId("M-1"), 2, 1, "A6", "second"),
                new CardPrint(new MixId("M-2"), 2, 1, "A6", "of another mix"));
        FactorModel model = model();
        assertThat(model.prints())
                .extracting(print -> print.value().destination())
                .containsExactly("second");
        model.look(1);
        assertThat(model.prints())
                .extracting(print -> print.value().destination())
                .containsExactly("first");
        model.look(9);
        assertThat(model.prints()).isEmpty();
    }
}
