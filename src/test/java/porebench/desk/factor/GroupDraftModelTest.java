package porebench.desk.factor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
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
import porebench.evidence.Bench;
import porebench.evidence.GroupBench;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.exchange.CsvSheets;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.profile.Profiles;
import porebench.print.PdfPress;
import porebench.record.FactorProposal;
import porebench.record.FactorProposal.Step;
import porebench.record.LaboratoryProfile;
import porebench.record.column.FactorIssueColumns;
import porebench.store.Books;

/** The factor page of a mix that is tested for a group, in a laboratory that has its factors checked. */
class GroupDraftModelTest {
    @TempDir
    Path folder;

    private GroupBench group;
    private DeskModel desk;
    private FactorModel model;

    @BeforeEach
    void open() {
        group = new GroupBench(folder);
        Books.keep(
                group.book,
                new LaboratoryProfile(Profiles.standard()
                        .copyAs("own", "Own figures")
                        .copyAs("astm-c231", "Own figures")
                        .with(FigureName.FACTOR_STEPS, new Figure("checked", "Own choice", Mark.LABORATORY))));
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
                group.book);
        desk.setPerson("R. Vale");
        desk.select(Bench.MIX);
        model = new FactorModel(desk);
        desk.onChange(model::follow);
    }

    @AfterEach
    void close() {
        group.close();
    }

    private void draftForAll() {
        TypedDraft draft = model.history()
                .draft()
                .with(FactorIssueColumns.REASON, "one for all")
                .with(FactorIssueColumns.OVERRIDE_BY, model.doubts().isEmpty() ? "" : "M. Ash")
                .with(FactorIssueColumns.OVERRIDE_REASON, model.doubts().isEmpty() ? "" : "looked at");
        for (IssueDoubt doubt : model.doubts()) {
            draft = draft.with(FactorModel.taken(doubt), true);
        }
        model.update("typing", draft);
        Issuing.Decision decision = model.deciding().orElseThrow();
        GroupOffer offer = new GroupOffer(desk);
        assertThat(Refused.by(outcome -> offer.draft(
                        decision,
                        answer -> offer.keep(answer.value().orElseThrow().drafts(), decision.reason(), outcome))))
                .isEmpty();
    }

    private List<Problem> act(ProposalModel.Act act, String who, String said) {
        desk.setPerson(who);
        return Refused.by(outcome -> model.proposal().act(act, said, outcome));
    }

    private List<Step> steps() {
        return List.of("M-1/p1", "M-2/p1", "M-3/p1").stream()
                .map(id -> group.bench.newest(FactorProposal.class, id).step())
                .toList();
    }

    @Test
    void aStepIsTakenForEveryDraftOfTheGroupOrForThatOfTheMixAlone() {
        assertThat(model.proposal().ground()).isEmpty();
        assertThat(model.proposal().isForGroup()).isFalse();
        draftForAll();
        ProposalModel draft = model.proposal();
        assertThat(steps()).containsOnly(Step.DRAFTED);
        assertThat(draft.ground()).isEqualTo("Of the factor of group G-1 (version 1), found on mix M-1.");
        assertThat(draft.groupWords()).isEqualTo("Take the step for every open draft of group G-1");
        assertThat(draft.isForGroup()).isTrue();
        assertThat(Books.codes(act(ProposalModel.Act.CHECK, "R. Vale", "fine"))).contains("proposal.own-draft-checked");
        assertThat(Books.codes(act(ProposalModel.Act.PUT_IN_FORCE, "M. Ash", "")))
                .isNotEmpty();
        assertThat(act(ProposalModel.Act.CHECK, "M. Ash", "recalculated")).isEmpty();
        assertThat(steps()).containsOnly(Step.CHECKED);
        draft.takeForGroup(false);
        assertThat(act(ProposalModel.Act.SEND_BACK, "M. Ash", "look again")).isEmpty();
        assertThat(steps()).containsExactly(Step.SENT_BACK, Step.CHECKED, Step.CHECKED);
        draft.takeForGroup(true);
        assertThat(act(ProposalModel.Act.SEND_BACK, "M. Ash", "look again")).isEmpty();
        assertThat(steps()).containsOnly(Step.SENT_BACK);
        assertThat(act(ProposalModel.Act.DROP, "M. Ash", "no more")).isEmpty();
        assertThat(steps()).containsOnly(Step.DROPPED);
        assertThat(draft.groupWords()).isEmpty();
    }

    @Test
    void allDraftsOfTheGroupArePutInForceTogether() {
        draftForAll();
        assertThat(act(ProposalModel.Act.CHECK, "M. Ash", "recalculated")).isEmpty();
        assertThat(act(ProposalModel.Act.PUT_IN_FORCE, "M. Ash", "")).isEmpty();
        assertThat(steps()).containsOnly(Step.ISSUED);
        assertThat(group.bench.evidence().newestIssue().orElseThrow().approvedBy())
                .isEqualTo("M. Ash");
    }
}
