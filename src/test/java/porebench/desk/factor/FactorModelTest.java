package porebench.desk.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
import porebench.evidence.CardState;
import porebench.evidence.FactorState;
import porebench.evidence.budget.QuotedBudget;
import porebench.evidence.change.ChangeDeciding;
import porebench.evidence.change.SourceChange;
import porebench.evidence.issue.IssueDoubt;
import porebench.exchange.CsvSheets;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.port.CardHandout;
import porebench.port.OutputFile;
import porebench.port.Paper;
import porebench.print.PdfPress;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.column.FactorIssueColumns;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.statistics.comparison.ComparisonVerdict;
import porebench.store.Books;

/** Issues, replaces and withdraws factors through the model of the page, on a real lab book; today is 2026-03-02. */
class FactorModelTest {
    private static final MixId MIX = new MixId("M-1");

    @TempDir
    Path folder;

    private LabBook book;
    private DeskModel desk;
    private FactorModel model;

    @BeforeEach
    void open() {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                Samples.meter("B-1", MeterType.B),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.mix("M-2", "S-1", "S-2"),
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
        desk.select(MIX);
        model = new FactorModel(desk);
        desk.onChange(model::follow);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private void trials(String... gauges) {
        for (int i = 0; i < gauges.length; i++) {
            Books.keep(book, Samples.trial("T-" + i, "M-1", "M-1/1", gauges[i]));
        }
        desk.refresh();
    }

    private void reason(String text) {
        model.history().update("reason", model.history().draft().with(FactorIssueColumns.REASON, text));
        takeOn();
    }

    /** Ticks every doubt: the trials state no masses, and the meter was never calibrated. */
    private void takeOn() {
        TypedDraft draft = model.history()
                .draft()
                .with(FactorIssueColumns.OVERRIDE_BY, "M. Ash")
                .with(FactorIssueColumns.OVERRIDE_REASON, "looked at");
        for (IssueDoubt doubt : model.doubts()) {
            draft = draft.with(FactorModel.taken(doubt), true);
        }
        model.history().update("doubts", draft);
    }

    private static List<String> errors(List<Problem> problems) {
        return codes(problems.stream().filter(Problem::isError).toList());
    }

    private static List<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).toList();
    }

    @Test
    void cannotIssueBeforeATrialCounts() {
        assertThat(model.canIssue()).isFalse();
        assertThat(codes(model.problems())).contains("issue.no-trial-counts");
        trials("5.4", "5.4", "5.4");
        assertThat(model.canIssue()).isTrue();
    }

    @Test
    void asksForAReasonOnlyOnceItWasTried() {
        trials("5.4", "5.4", "5.4");
        assertThat(codes(model.problems())).doesNotContain("form.required");
        takeOn();
        assertThat(errors(Refused.by(out -> model.issue(out)))).containsExactly("form.required");
        assertThat(codes(model.problems())).contains("form.required");
        assertThat(model.revisions()).isEmpty();
    }

    @Test
    void eachDoubtIsTickedAndTakenOnByNameAndReason() {
        trials("5.4", "5.4", "5.4");
        model.history().update("reason", model.history().draft().with(FactorIssueColumns.REASON, "first factor"));
        assertThat(model.needsOverride()).isTrue();
        assertThat(model.canIssue()).isTrue();
        assertThat(errors(Refused.by(out -> model.issue(out)))).containsExactly("issue.doubts-open");
        model.history().update("who", model.history().draft().with(FactorIssueColumns.OVERRIDE_BY, "M. Ash"));
        assertThat(errors(Refused.by(out -> model.issue(out))))
                .contains("issue.doubts-open", "issue.override-incomplete");
        model.history()
                .update(
                        "why",
                        model.history().draft().with(FactorIssueColumns.OVERRIDE_REASON, "checked the day after"));
        assertThat(errors(Refused.by(out -> model.issue(out)))).containsExactly("issue.doubts-open");
        List<IssueDoubt> doubts = model.doubts();
        for (IssueDoubt doubt : doubts) {
            assertThat(model.revisions()).isEmpty();
            assertThat(errors(Refused.by(out -> model.issue(out)))).containsExactly("issue.doubts-open");
            model.history().update("doubt", model.history().draft().with(FactorModel.taken(doubt), true));
        }
        assertThat(Refused.by(out -> model.issue(out))).isEmpty();
        FactorIssue issued = model.revisions().get(0);
        assertThat(issued.takenOn()).hasSize(doubts.size());
        assertThat(issued.takenOn())
                .allMatch(taken -> taken.by().equals("M. Ash") && taken.reason().equals("checked the day after"));
    }

    @Test
    void issuesAFactorThatIsInForceTodayAndHasACard() {
        trials("5.4", "5.4", "5.4");
        assertThat(model.history().draft().text(FactorIssueColumns.IN_FORCE_FROM))
                .isEqualTo("2026-03-02");
        assertThat(model.history().draft().text(FactorIssueColumns.RECHECK_BY)).isEqualTo("2027-03-02");
        reason("first factor");
        assertThat(Refused.by(out -> model.issue(out))).isEmpty();
        assertThat(model.state()).contains(FactorState.IN_FORCE);
        FactorIssue issue = model.inForce().orElseThrow();
        assertThat(issue.revision()).isEqualTo(1);
        assertThat(issue.issuedBy()).isEqualTo("R. Vale");
        assertThat(model.looked()).contains(issue);
        assertThat(model.isCardCurrent()).isTrue();
        assertThat(model.card().orElseThrow().issue()).isEqualTo(issue);
        assertThat(model.history().isChanged()).isFalse();
        assertThat(model.history().draft().text(FactorIssueColumns.REASON)).isEmpty();
    }

    @Test
    void aRefusedIssueKeepsWhatWasTyped() {
        trials("5.4", "5.4", "5.4");
        reason("first factor");
        model.history().update("date", model.history().draft().with(FactorIssueColumns.RECHECK_BY, "2026-01-01"));
        assertThat(codes(Refused.by(out -> model.issue(out)))).contains("issue.recheck-before-start");
        assertThat(model.history().draft().text(FactorIssueColumns.REASON)).isEqualTo("first factor");
        assertThat(model.history().isChanged()).isTrue();
    }

    @Test
    void refusesADateThatIsNone() {
        trials("5.4", "5.4", "5.4");
        model.history().update("date", model.history().draft().with(FactorIssueColumns.IN_FORCE_FROM, "31.3.2026"));
        assertThat(model.problems()).anySatisfy(problem -> {
            assertThat(problem.field()).isEqualTo("inForceFrom");
            assertThat(problem.code()).isEqualTo("form.not-a-date");
        });
        assertThat(model.canIssue()).isFalse();
        model.history().undo();
        assertThat(model.canIssue()).isTrue();
    }

    @Test
    void refusesAYearThatNoFileMayHold() {
        trials("5.4", "5.4", "5.4");
        model.history().update("date", model.history().draft().with(FactorIssueColumns.IN_FORCE_FROM, "0026-03-31"));
        assertThat(codes(model.problems())).contains("form.year-impossible");
        assertThat(model.canIssue()).isFalse();
    }

    @Test
    void withdrawsFromTodayOn() {
        trials("5.4", "5.4", "5.4");
        assertThat(model.canWithdraw()).isFalse();
        reason("first factor");
        Refused.by(out -> model.issue(out));
        assertThat(Refused.by(out -> model.withdraw("quarry closed", out))).isEmpty();
        assertThat(model.state()).contains(FactorState.WITHDRAWN);
        assertThat(model.inForce()).isEmpty();
        assertThat(model.card()).as("a withdrawal has no card").isEmpty();
        model.look(1);
        assertThat(model.card()).isPresent();
        assertThat(model.isCardCurrent()).isFalse();
        assertThat(model.canWithdraw()).isFalse();
    }

    private Answer<CardHandout.Handed> save(Paper paper, String file, boolean marked) {
        CardHandout handout = new CardHandout(book, desk.tools().press(), Locale.ENGLISH);
        Answer<CardHandout.Handed> answer =
                handout.toFile(model.wish(paper, marked, "factor card"), OutputFile.fresh(folder.resolve(file)));
        desk.refresh();
        return answer;
    }

    @Test
    void numbersTheCardsOfARevisionThatLeftTheLaboratory() {
        trials("5.4", "5.4", "5.4");
        Books.keep(book, Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 2)));
        desk.refresh();
        assertThat(save(Paper.A6, "one.pdf", false).problems()).isEmpty();
        assertThat(save(Paper.CARD_4X6, "two.pdf", false).problems()).isEmpty();
        assertThat(model.prints()).extracting(print -> print.value().number()).containsExactly(1, 2);
        assertThat(model.prints()).extracting(print -> print.value().paper()).containsExactly("A6", "4x6in");
        assertThat(model.prints()).extracting(print -> print.value().way()).containsOnly(CardPrint.Way.SAVED);
    }

    @Test
    void aWithdrawnFactorLeavesOnlyAsAMarkedCopy() {
        trials("5.4", "5.4", "5.4");
        Books.keep(book, Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 2)));
        desk.refresh();
        Refused.by(out -> model.withdraw("quarry closed", out));
        model.look(1);
        assertThat(model.card().orElseThrow().state()).isEqualTo(CardState.WITHDRAWN);
        assertThat(codes(save(Paper.A6, "one.pdf", false).problems())).containsExactly("issue.not-usable");
        assertThat(folder.resolve("one.pdf")).doesNotExist();
        assertThat(save(Paper.A6, "one.pdf", true).value().orElseThrow().card().isMarked())
                .isTrue();
        assertThat(model.prints()).extracting(print -> print.value().way()).containsOnly(CardPrint.Way.MARKED_COPY);
    }

    @Test
    void keepsAChangedDraftWhenTheLabBookGrowsButNotWhenTheMixChanges() {
        trials("5.4", "5.4", "5.4");
        reason("half a reason");
        Books.keep(book, Samples.trial("T-9", "M-1", "M-1/1", "5.5"));
        desk.refresh();
        assertThat(model.history().draft().text(FactorIssueColumns.REASON)).isEqualTo("half a reason");
        desk.select(new MixId("M-2"));
        assertThat(model.history().draft().text(FactorIssueColumns.REASON)).isEmpty();
        assertThat(model.determinations()).isEmpty();
        assertThat(model.history().draft().text(FactorIssueColumns.RECHECK_BY))
                .isEqualTo(LocalDate.of(2027, 3, 2).toString());
    }

    @Test
    void anotherDeterminationHasOtherDoubtsSoThatNoneIsTicked() {
        Books.keep(book, Samples.determination("M-1/2", "M-1"));
        trials("5.4", "5.4", "5.4");
        assertThat(model.choices(FactorModel.DETERMINATION)).containsExactly("M-1/1", "M-1/2");
        assertThat(model.choiceWords(FactorModel.DETERMINATION, "M-1/1"))
                .matches("M-1/1, begun \\d{4}-\\d\\d-\\d\\d, 3 trials count");
        assertThat(model.isFixed(FactorModel.DETERMINATION)).isFalse();
        reason("first factor");
        IssueDoubt doubt = model.doubts().get(0);
        model.tick(FactorModel.taken(doubt), true);
        assertThat(model.draft().isYes(FactorModel.taken(doubt))).isTrue();
        model.type(FactorIssueColumns.REASON, "first factor of all");
        assertThat(model.draft().isYes(FactorModel.taken(doubt))).isTrue();
        assertThat(model.history().undoLabel()).contains("typing the reason");
        model.type(FactorModel.DETERMINATION, "M-1/2");
        assertThat(model.draft().isYes(FactorModel.taken(doubt))).isFalse();
        assertThat(model.draft().text(FactorIssueColumns.REASON)).isEqualTo("first factor of all");
        assertThat(model.history().undoLabel()).contains("choosing the determination");
        model.tick(FactorModel.taken(doubt), true);
        assertThat(model.history().undoLabel()).contains("ticking a doubt");
    }

    /** What the page quotes of the determination is stated with the factor for good. */
    @Test
    void aFactorIsIssuedWithItsUncertainty() {
        trials("5.4", "5.5", "5.4");
        reason("first");
        assertThat(errors(Refused.by(model::issue))).isEmpty();
        FactorIssue issued = desk.evidence().orElseThrow().newestIssue().orElseThrow();
        assertThat(issued.grounds()
                        .uncertainty()
                        .orElseThrow()
                        .expandedPercent()
                        .doubleValue())
                .isCloseTo(
                        QuotedBudget.of(
                                        desk.evidence().orElseThrow(),
                                        desk.evidence()
                                                .orElseThrow()
                                                .determinations()
                                                .get(0),
                                        desk.scatter())
                                .orElseThrow()
                                .uncertaintyPercent(),
                        within(1e-6));
    }

    /** 0.4 from ledge 1 stays though ledge 2 alone would give 0.5: somebody decided so, on trials that bear it. */
    @Test
    void aFactorIsKeptAsSomebodyDecided() {
        trials("5.4", "5.5", "5.4", "5.4", "5.4", "5.4", "5.5", "5.4", "5.4", "5.4");
        reason("first");
        assertThat(errors(Refused.by(model::issue))).isEmpty();
        Books.correct(book, Samples.source("S-2", Role.COARSE, "2"));
        Books.keep(
                book,
                Samples.determination("M-1/2", "M-1").madeWith(Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 2)));
        String[] gauges = {"5.4", "5.5", "5.4", "5.5", "5.4", "5.5", "5.5", "5.5", "5.5", "5.4"};
        for (int i = 0; i < gauges.length; i++) {
            Books.keep(book, Samples.trial("N-" + i, "M-1", "M-1/2", gauges[i]));
        }
        desk.refresh();
        assertThat(model.keptWords()).isEmpty();
        SourceChange change = SourceChange.of(desk.evidence().orElseThrow(), desk.scatter(), 0.9)
                .value()
                .orElseThrow();
        Books.keep(
                book,
                ChangeDeciding.decide(
                                desk.evidence().orElseThrow(),
                                change,
                                new ChangeDeciding.Wish(
                                        ComparisonVerdict.KEEP,
                                        Optional.empty(),
                                        LocalDate.of(2026, 3, 2),
                                        "H. Ost",
                                        ""))
                        .value()
                        .orElseThrow());
        desk.refresh();
        assertThat(model.keptWords())
                .isEqualTo(
                        "Keep 0.4 % air, the factor from before the change, as H. Ost decided on 2026-03-02 (M-1/c1).");
        assertThat(model.draft().isYes(KeptChoice.COLUMN)).isTrue();
        reason("kept");
        assertThat(errors(Refused.by(model::issue))).isEmpty();
        FactorIssue kept = desk.evidence().orElseThrow().newestIssue().orElseThrow();
        assertThat(kept.revision()).isEqualTo(2);
        assertThat(kept.factorPercent()).isEqualByComparingTo("0.4");
        assertThat(kept.determinationId().text()).isEqualTo("M-1/2");
        assertThat(kept.grounds().keptBy()).isPresent();
        assertThat(kept.grounds().uncertainty()).isEmpty();
        assertThat(model.state()).contains(FactorState.IN_FORCE);
        model.history().update("no", model.draft().with(KeptChoice.COLUMN, false));
        reason("its own");
        assertThat(errors(Refused.by(model::issue))).isEmpty();
        FactorIssue own = desk.evidence().orElseThrow().newestIssue().orElseThrow();
        assertThat(own.factorPercent()).isEqualByComparingTo("0.5");
        assertThat(own.grounds().keptBy()).isEmpty();
    }
}
