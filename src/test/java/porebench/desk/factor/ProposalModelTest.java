package porebench.desk.factor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
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
import porebench.desk.frame.rail.NextStep;
import porebench.evidence.Bench;
import porebench.evidence.issue.IssueDoubt;
import porebench.exchange.CsvSheets;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.profile.Profiles;
import porebench.print.PdfPress;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.column.FactorIssueColumns;
import porebench.store.Books;

/** The factor page of a laboratory that wants three people for a factor, and of one that wants one. */
class ProposalModelTest {
    @TempDir
    Path folder;

    private Bench bench;
    private DeskModel desk;
    private FactorModel model;

    @BeforeEach
    void open() {
        bench = new Bench(folder);
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
                bench.book);
        desk.setPerson("R. Vale");
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private void show(String steps) {
        Books.keep(
                bench.book,
                new LaboratoryProfile(Profiles.standard()
                        .copyAs("own", "Own rules")
                        .with(FigureName.FACTOR_STEPS, new Figure(steps, "Own choice", Mark.LABORATORY))));
        MixDesign mix = bench.mix();
        Books.correct(
                bench.book,
                new MixDesign(
                        mix.id(),
                        mix.title(),
                        mix.batch(),
                        mix.soakMinutes(),
                        mix.airTolerancePercent(),
                        "own",
                        mix.remarks(),
                        Optional.empty()));
        desk.refresh();
        desk.select(Bench.MIX);
        model = new FactorModel(desk);
        desk.onChange(model::follow);
    }

    private void type() {
        TypedDraft draft = model.history()
                .draft()
                .with(FactorIssueColumns.IN_FORCE_FROM, "2026-03-09")
                .with(FactorIssueColumns.IN_FORCE_AT, "14:30")
                .with(FactorIssueColumns.CONDITIONS, "sand Alder only")
                .with(FactorIssueColumns.REASON, "new ledge")
                .with(FactorIssueColumns.OVERRIDE_BY, model.doubts().isEmpty() ? "" : "M. Ash")
                .with(FactorIssueColumns.OVERRIDE_REASON, model.doubts().isEmpty() ? "" : "looked at");
        for (IssueDoubt doubt : model.doubts()) {
            draft = draft.with(FactorModel.taken(doubt), true);
        }
        model.update("typing", draft);
    }

    private List<Problem> act(ProposalModel.Act act, String who, String said) {
        desk.setPerson(who);
        return Refused.by(outcome -> model.proposal().act(act, said, outcome));
    }

    private static List<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).toList();
    }

    @Test
    void threePeopleTakeTheirStepsAndThePageSaysWhoTookWhich() {
        show("three");
        type();
        assertThat(codes(Refused.by(model::issue))).isEmpty();
        ProposalModel draft = model.proposal();
        assertThat(bench.evidence().issues()).isEmpty();
        assertThat(draft.title()).isEqualTo("Draft 1 waits for a check");
        assertThat(draft.content())
                .startsWith("0.4 % air from M-1/1, in force from 2026-03-09 14:30, recheck by")
                .endsWith("Reason: new ledge. Holds only: sand Alder only.");
        NextStep next = NextStep.of(bench.evidence(), desk.tools().now(), Problem::code);
        assertThat(next).isEqualTo(new NextStep("next.draft-drafted", List.of("R. Vale"), 5));
        assertThat(codes(draft.why())).containsExactly("proposal.own-draft-checked");
        assertThat(codes(draft.against(ProposalModel.Act.PUT_IN_FORCE))).contains("proposal.not-checked");
        assertThat(draft.against(ProposalModel.Act.DROP)).isEmpty();
        assertThat(codes(act(ProposalModel.Act.CHECK, "r. vale", "fine"))).contains("proposal.own-draft-checked");
        assertThat(act(ProposalModel.Act.CHECK, "M. Ash", "recalculated")).isEmpty();
        assertThat(draft.title()).isEqualTo("Draft 1 is checked, ready to be put in force");
        assertThat(codes(draft.why())).containsExactly("proposal.own-check-in-force");
        assertThat(draft.steps())
                .hasSize(2)
                .satisfies(steps -> assertThat(steps.get(0)).startsWith("drafted by R. Vale, 20"))
                .satisfies(steps -> assertThat(steps.get(1))
                        .startsWith("checked by M. Ash, 20")
                        .endsWith(": recalculated"));
        assertThat(act(ProposalModel.Act.PUT_IN_FORCE, "T. Oak", "")).isEmpty();
        FactorIssue issue = bench.evidence().newestIssue().orElseThrow();
        assertThat(issue.terms().atText() + " " + issue.terms().conditions()).isEqualTo("14:30 sand Alder only");
        assertThat(draft.open()).isEmpty();
        assertThat(draft.title()).isEmpty();
    }

    /** Whoever drafts it anew finds in the form what was drafted. */
    @Test
    void whatIsSentBackStandsInTheForm() {
        show("checked");
        type();
        assertThat(Refused.by(model::issue)).isEmpty();
        assertThat(act(ProposalModel.Act.SEND_BACK, "M. Ash", "wrong hour")).isEmpty();
        assertThat(model.draft().text(FactorIssueColumns.IN_FORCE_AT)).isEqualTo("14:30");
        assertThat(model.draft().text(FactorIssueColumns.CONDITIONS)).isEqualTo("sand Alder only");
        assertThat(model.proposal().why()).isEmpty();
        assertThat(act(ProposalModel.Act.DROP, "M. Ash", "no more")).isEmpty();
        assertThat(bench.newest(FactorProposal.class, "M-1/p1").remark()).isEqualTo("no more");
    }

    @Test
    void aTrialCorrectedSinceIsSaidBeforeAnybodyChecks() {
        show("three");
        type();
        assertThat(Refused.by(model::issue)).isEmpty();
        desk.setPerson("");
        assertThat(codes(model.proposal().against(ProposalModel.Act.PUT_IN_FORCE)))
                .containsExactly("proposal.not-checked");
        assertThat(model.proposal().against(ProposalModel.Act.CHECK)).isEmpty();
        desk.setPerson("M. Ash");
        assertThat(model.proposal().why()).isEmpty();
        Books.correct(bench.book, Samples.trial("T-2", "M-1", "M-1/1", "5.5"));
        desk.refresh();
        assertThat(codes(model.proposal().why())).contains("proposal.evidence-changed");
        assertThat(desk.rows().get(0).missing())
                .anySatisfy(problem -> assertThat(problem.code()).isEqualTo("register.draft-to-check"));
    }

    @Test
    void whereOnePersonIssuesThereIsNoDraft() {
        show("one");
        type();
        assertThat(model.proposal().isDrafted()).isFalse();
        assertThat(Refused.by(model::issue)).isEmpty();
        assertThat(bench.evidence().newestIssue().orElseThrow().terms().atText())
                .isEqualTo("14:30");
        assertThat(model.proposal().open()).isEmpty();
        assertThat(codes(act(ProposalModel.Act.CHECK, "M. Ash", "x"))).containsExactly("proposal.none-open");
    }

    @Test
    void anHourThatIsNoneIsSaidUnderItsField() {
        show("one");
        type();
        model.update("hour", model.draft().with(FactorIssueColumns.IN_FORCE_AT, "half past"));
        assertThat(model.problems())
                .anySatisfy(problem ->
                        assertThat(problem.field() + " " + problem.code()).isEqualTo("inForceAt form.not-a-time"));
        assertThat(model.canIssue()).isFalse();
    }
}
