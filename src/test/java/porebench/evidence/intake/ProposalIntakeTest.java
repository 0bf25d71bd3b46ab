package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.issue.Verifying;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Place;
import porebench.method.profile.Profiles;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.FactorProposal;
import porebench.record.Kept;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.SampleCalibrations;
import porebench.record.SampleGroups;
import porebench.record.SampleProposals;
import porebench.store.Books;

/** A file brings in no step that nobody took here, and no factor that a laboratory wants several people for. */
class ProposalIntakeTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private Intake.Result check(Kept... values) {
        List<Incoming> incoming = java.util.Arrays.stream(values)
                .map(value -> new Incoming(new Place("f.csv", Optional.of(2), Optional.empty()), value))
                .toList();
        return Intake.check(bench.book, incoming, SampleCalibrations.TODAY);
    }

    private void keep(Intake.Result result) {
        assertThat(result.problems()).noneMatch(problem -> problem.isError());
        assertThat(bench.book.keep(result.drafts(), "R. Vale", "import")).isEmpty();
    }

    @Test
    void aCheckedDraftComesInAsSentBack() {
        Intake.Result result = check(SampleProposals.checked("M-1", "M-1/1"));
        assertThat(Books.codes(result.problems())).containsExactly("import.proposal-open");
        keep(result);
        FactorProposal there = bench.newest(FactorProposal.class, "M-1/p1");
        assertThat(there.step()).isEqualTo(FactorProposal.Step.SENT_BACK);
        assertThat(there.terms().checkedBy()).isEmpty();
    }

    @Test
    void whatIsThereUnchangedIsPassedOverAndAnotherStepIsRefused() {
        FactorProposal sentBack = SampleProposals.full("M-1", "M-1/1");
        keep(check(sentBack));
        assertThat(check(sentBack).alreadyThere()).isEqualTo(1);
        assertThat(Books.codes(check(SampleProposals.checked("M-1", "M-1/1")).problems()))
                .containsExactly("import.differs");
    }

    @Test
    void aDraftNamesAMixADeterminationAndWhereIssuedARevisionThatAreKnown() {
        assertThat(Books.codes(check(SampleProposals.full("M-9", "M-9/1")).problems()))
                .containsExactly("import.unknown-mix", "import.unknown-determination");
        assertThat(Books.codes(check(SampleProposals.issued("M-1", "M-1/1", 1)).problems()))
                .containsExactly("import.unknown-issue");
        FactorProposal none = SampleProposals.checked("M-1", "M-1/1")
                .then(
                        FactorProposal.Step.ISSUED,
                        "T. Oak",
                        SampleProposals.full("M-1", "M-1/1").at(),
                        "");
        assertThat(Books.codes(check(none).problems())).containsExactly("proposal.issued-as");
        bench.issue(Bench.START);
        keep(check(SampleProposals.issued("M-1", "M-1/1", 1)));
        assertThat(bench.newest(FactorProposal.class, "M-1/p1").revision()).contains(1);
    }

    /** Group G-1 and decision M-1/c1 are in no book and in no file. */
    @Test
    void aDraftNamesAGroupAndADecisionThatAreKnown() {
        assertThat(Books.codes(check(SampleProposals.lent("M-1", "M-1", "M-1/1", "G-1"))
                        .problems()))
                .containsExactly("proposal.unknown-group");
        assertThat(Books.codes(
                        check(SampleProposals.kept("M-1", "M-1/1", "M-1/c1")).problems()))
                .containsExactly("proposal.unknown-decision");
        Books.keep(bench.book, SampleGroups.mix("M-2", "717.5", "1032.5"), SampleGroups.group("G-1", "M-2"));
        assertThat(Books.codes(check(SampleProposals.lent("M-2", "M-7", "M-1/1", "G-1"))
                        .problems()))
                .containsExactly("proposal.unknown-group");
        keep(check(SampleProposals.lent("M-2", "M-1", "M-1/1", "G-1")));
        assertThat(bench.newest(FactorProposal.class, "M-2/p1").testedMix()).isEqualTo(Bench.MIX);
    }

    /** The file has names, versions and an issued draft; that these people took these steps it cannot prove. */
    @Test
    void underStepsAFactorFromAFileIsNotVerifiedHereWhateverItNames() {
        FactorIssue issue =
                bench.issuing(Bench.decision(Bench.FIRST, Bench.START)).value().orElseThrow();
        assertThat(check(issue).drafts())
                .extracting(draft -> ((FactorIssue) draft.value()).origin())
                .containsExactly(FactorOrigin.HERE);
        Books.keep(
                bench.book,
                new LaboratoryProfile(Profiles.standard()
                        .copyAs("own", "Own rules")
                        .with(FigureName.FACTOR_STEPS, new Figure("checked", "Own choice", Mark.LABORATORY))));
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
        Intake.Result result = check(issue, SampleProposals.issued("M-1", "M-1/1", 1));
        assertThat(Books.codes(result.problems())).contains("import.not-verified", "import.steps-elsewhere");
        keep(result);
        assertThat(bench.newest(FactorIssue.class, "M-1/r1").origin()).isEqualTo(FactorOrigin.IMPORTED);
        assertThat(Books.codes(Verifying.confirm(
                                bench.evidence(),
                                bench.scatter(),
                                bench.evidence().issues().get(0),
                                "T. Oak",
                                "seen",
                                Optional.empty())
                        .problems()))
                .contains("issue.steps-needed");
    }
}
