package porebench.evidence.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.FactorProposal.Step;
import porebench.record.FactorTerms;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.store.Books;

/** A factor is drafted, checked and put in force by the people whom the laboratory wants, and by nobody on another way. */
class ProposingTest {
    private static final LocalDateTime NOW = Bench.START.atTime(10, 0);
    private static final LocalDate LATER = Bench.START.plusDays(3);

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

    /** Puts the mix under a profile that asks for steps, and perhaps for a second person too. */
    private void ask(String steps, String secondPerson) {
        Profile own = Profiles.standard()
                .copyAs("own", "Own rules")
                .with(FigureName.FACTOR_STEPS, new Figure(steps, "Own choice", Mark.LABORATORY))
                .with(FigureName.SECOND_PERSON, new Figure(secondPerson, "Own choice", Mark.LABORATORY));
        Books.keep(bench.book, new LaboratoryProfile(own));
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
    }

    private Answer<Proposing.Taken> drafting(String who, LocalDate from) {
        Evidence evidence = bench.evidence();
        Issuing.Decision decision = bench.takingAll(
                        evidence, new Issuing.Decision(Bench.FIRST, from, Optional.empty(), who, "", "first factor"))
                .under(new FactorTerms(FactorTerms.time("14:30"), "sand Alder only", ""));
        return Proposing.draft(evidence, bench.scatter(), decision, NOW);
    }

    private Answer<Proposing.Taken> checking(String who) {
        return Proposing.check(bench.evidence(), who, "recalculated", NOW.plusHours(1));
    }

    private Answer<Proposing.Taken> putting(String who) {
        return Proposing.putInForce(bench.evidence(), who, "", NOW.plusHours(2));
    }

    private FactorProposal keep(Answer<Proposing.Taken> answer) {
        assertThat(Books.codes(
                        answer.problems().stream().filter(Problem::isError).toList()))
                .isEmpty();
        Proposing.Taken taken = answer.value().orElseThrow();
        assertThat(bench.book.keep(taken.drafts(), taken.proposal().by(), "step"))
                .isEmpty();
        return taken.proposal();
    }

    private static List<String> errors(Answer<?> answer) {
        return Books.codes(answer.problems().stream().filter(Problem::isError).toList());
    }

    private List<String> due() {
        return Books.codes(LaboratoryStanding.of(bench.book).rows(NOW).get(0).missing()).stream()
                .filter(code -> code.startsWith("register.draft"))
                .toList();
    }

    @Test
    void threePeopleBringAFactorInForceAndEachStepIsAVersion() {
        ask("three", "yes");
        keep(drafting("R. Vale", LATER));
        assertThat(due()).containsExactly("register.draft-to-check");
        keep(checking("M. Ash"));
        assertThat(due()).containsExactly("register.draft-checked");
        keep(putting("T. Oak"));
        assertThat(due()).isEmpty();
        FactorIssue issue = bench.evidence().newestIssue().orElseThrow();
        assertThat(List.of(issue.issuedBy(), issue.terms().checkedBy(), issue.approvedBy()))
                .containsExactly("R. Vale", "M. Ash", "T. Oak");
        assertThat(issue.begins()).isEqualTo(LATER.atTime(14, 30));
        assertThat(issue.terms().conditions()).isEqualTo("sand Alder only");
        assertThat(bench.evidence().stateAt(LATER.atTime(14, 29))).isEqualTo(FactorState.NO_FACTOR);
        assertThat(bench.evidence().stateAt(LATER.atTime(14, 30))).isEqualTo(FactorState.IN_FORCE);
        assertThat(bench.book.history(FactorProposal.class, "M-1/p1"))
                .extracting(
                        version -> version.value().step(),
                        version -> version.value().by(),
                        version -> version.value().at())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Step.DRAFTED, "R. Vale", NOW),
                        org.assertj.core.groups.Tuple.tuple(Step.CHECKED, "M. Ash", NOW.plusHours(1)),
                        org.assertj.core.groups.Tuple.tuple(Step.ISSUED, "T. Oak", NOW.plusHours(2)));
        assertThat(bench.book
                        .latest(FactorProposal.class, "M-1/p1")
                        .orElseThrow()
                        .value()
                        .revision())
                .contains(1);
        assertThat(bench.book.verify()).isEmpty();
    }

    @Test
    void underThreeNobodyTakesTwoSteps() {
        ask("three", "no");
        keep(drafting("R. Vale", LATER));
        assertThat(errors(checking(" r.  VALE "))).containsExactly("proposal.own-draft-checked");
        assertThat(errors(putting("M. Ash"))).containsExactly("proposal.not-checked");
        keep(checking("M. Ash"));
        assertThat(errors(checking("T. Oak"))).containsExactly("proposal.not-to-check");
        assertThat(errors(putting("R. Vale"))).contains("proposal.own-draft-in-force");
        assertThat(errors(putting("m. ash"))).containsExactly("proposal.own-check-in-force");
        assertThat(putting("T. Oak").value()).isPresent();
    }

    @Test
    void underCheckedWhoCheckedMayPutItInForceAndWhoDraftedMayNot() {
        ask("checked", "yes");
        keep(drafting("R. Vale", LATER));
        assertThat(errors(checking("R. Vale"))).contains("proposal.own-draft-checked");
        keep(checking("M. Ash"));
        assertThat(errors(putting("R. Vale"))).contains("proposal.own-draft-in-force");
        keep(putting("M. Ash"));
        assertThat(bench.evidence().newestIssue().orElseThrow().approvedBy()).isEqualTo("M. Ash");
    }

    /** What a person cannot do at any door, the lab book refuses last of all. */
    @ParameterizedTest
    @ValueSource(strings = {"checked", "three"})
    void nothingIsIssuedInOneStepWhereMoreAreAskedFor(String steps) {
        FactorIssue decided =
                bench.issuing(Bench.decision(Bench.FIRST, LATER)).value().orElseThrow();
        ask(steps, "no");
        assertThat(errors(bench.issuing(Bench.decision(Bench.FIRST, LATER)))).containsExactly("issue.steps-needed");
        assertThat(Books.codes(bench.book.keep(List.of(Draft.of(decided)), "R. Vale", "why")))
                .containsExactly("issue.steps-needed");
        assertThat(bench.evidence().issues()).isEmpty();
    }

    @Test
    void underOneAFactorIsIssuedAsEverAndNothingIsDrafted() {
        assertThat(FactorSteps.of(bench.evidence())).isEqualTo(FactorSteps.ONE);
        assertThat(errors(drafting("R. Vale", LATER))).containsExactly("proposal.not-needed");
        assertThat(bench.issue(LATER).revision()).isEqualTo(1);
    }

    @Test
    void aTrialCorrectedSinceStopsCheckAndPuttingInForceAndIsNamed() {
        ask("three", "no");
        keep(drafting("R. Vale", LATER));
        Books.correct(bench.book, Samples.trial("T-2", "M-1", "M-1/1", "5.5"));
        Answer<Proposing.Taken> check = checking("M. Ash");
        assertThat(errors(check)).contains("proposal.evidence-changed");
        assertThat(check.problems())
                .anySatisfy(problem -> assertThat(problem.code()).isEqualTo("issue.rests-on-other"));
        keep(Proposing.draft(
                bench.evidence(),
                bench.scatter(),
                bench.takingAll(
                        bench.evidence(),
                        new Issuing.Decision(Bench.FIRST, LATER, Optional.empty(), "R. Vale", "", "again")),
                NOW));
        assertThat(bench.evidence().proposals()).hasSize(1);
        keep(checking("M. Ash"));
        Books.correct(bench.book, Samples.trial("T-2", "M-1", "M-1/1", "5.4"));
        assertThat(errors(putting("T. Oak"))).contains("proposal.evidence-changed");
    }

    /** Two people look at the same moment: the trial is corrected after the check was decided and before it is kept. */
    @Test
    void theLabBookKeepsNoStepOnEvidenceThatChangedMeanwhile() {
        ask("checked", "no");
        Proposing.Taken drafted = drafting("R. Vale", LATER).value().orElseThrow();
        Books.correct(bench.book, Samples.trial("T-2", "M-1", "M-1/1", "5.5"));
        assertThat(Books.codes(bench.book.keep(drafted.drafts(), "R. Vale", "draft")))
                .contains("issue.evidence-changed-meanwhile", "issue.rests-on-other");
    }

    @Test
    void whatIsSentBackIsDraftedAnewUnderItsNumberAndADroppedOneIsNot() {
        ask("three", "no");
        keep(drafting("R. Vale", LATER));
        keep(checking("M. Ash"));
        assertThat(errors(drafting("R. Vale", LATER.plusDays(1)))).containsExactly("proposal.is-checked");
        assertThat(errors(Proposing.sendBack(bench.evidence(), "T. Oak", " ", NOW)))
                .containsExactly("form.required");
        keep(Proposing.sendBack(bench.evidence(), "T. Oak", "wrong day", NOW));
        assertThat(due()).containsExactly("register.draft-sent-back");
        assertThat(errors(Proposing.sendBack(bench.evidence(), "T. Oak", "again", NOW)))
                .containsExactly("proposal.is-sent-back");
        FactorProposal again = keep(drafting("M. Ash", LATER.plusDays(1)));
        assertThat(again.number()).isEqualTo(1);
        assertThat(again.terms().checkedBy()).isEmpty();
        assertThat(errors(checking("M. Ash"))).containsExactly("proposal.own-draft-checked");
        keep(Proposing.drop(bench.evidence(), "R. Vale", "not needed", NOW));
        assertThat(due()).isEmpty();
        assertThat(errors(checking("T. Oak"))).containsExactly("proposal.none-open");
        assertThat(keep(drafting("R. Vale", LATER)).number()).isEqualTo(2);
    }

    @Test
    void aDraftOfBeforeIsPutInForceByOneStepOnceOneIsAskedFor() {
        ask("three", "no");
        keep(drafting("R. Vale", LATER));
        LaboratoryProfile own = bench.newest(LaboratoryProfile.class, "own");
        Books.correct(
                bench.book,
                new LaboratoryProfile(
                        own.profile().with(FigureName.FACTOR_STEPS, new Figure("one", "Own choice", Mark.LABORATORY))));
        keep(putting("R. Vale"));
        assertThat(bench.evidence().newestIssue().orElseThrow().approvedBy()).isEmpty();
    }

    @Test
    void aDraftTouchesTheStandingOfItsMixAndNothingElse() {
        ask("three", "no");
        LaboratoryStanding before = LaboratoryStanding.of(bench.book);
        keep(drafting("R. Vale", LATER));
        RegisterRow row = before.renewed().rows(NOW).get(0);
        assertThat(Books.codes(row.missing())).contains("register.draft-to-check");
        assertThat(row.state()).isEqualTo(FactorState.NO_FACTOR);
    }
}
