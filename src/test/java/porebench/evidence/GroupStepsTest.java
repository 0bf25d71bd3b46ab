package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.GroupSteps;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.Proposing;
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
import porebench.record.GroupGround;
import porebench.record.LaboratoryProfile;
import porebench.record.SampleGroups;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;
import porebench.store.Books;

/** The factor of a group goes through the hands that the laboratory wants, as any other does. */
class GroupStepsTest {
    private static final MixId SECOND = new MixId("M-2");
    private static final MixId THIRD = new MixId("M-3");
    private static final List<MixId> MIXES = List.of(Bench.MIX, SECOND, THIRD);
    private static final LocalDateTime NOW = Bench.START.atTime(10, 0);

    @TempDir
    Path folder;

    private GroupBench group;
    private Bench bench;

    @BeforeEach
    void begin() {
        group = new GroupBench(folder);
        bench = group.bench;
    }

    @AfterEach
    void end() {
        group.close();
    }

    /** The laboratory changes the figure in its copy of the profile; the mixes stay under it, as they were tested. */
    private void ask(String steps) {
        Profile own = Profiles.standard()
                .copyAs("own", "Own figures")
                .copyAs(bench.mix().profileId(), "Own figures")
                .with(FigureName.FACTOR_STEPS, new Figure(steps, "Own choice", Mark.LABORATORY));
        Books.keep(bench.book, new LaboratoryProfile(own));
    }

    private Answer<GroupSteps.Taken> drafting(String who) {
        GroupIssuing issuing = group.issuing(Bench.FIRST);
        return issuing.draft(
                new Issuing.Decision(
                        Bench.FIRST,
                        Bench.START,
                        Optional.empty(),
                        who,
                        "",
                        "one for all",
                        issuing.doubts().isEmpty()
                                ? Optional.empty()
                                : Optional.of(Bench.takingOn(issuing.doubts(), "M. Ash", "looked at"))),
                NOW);
    }

    private GroupSteps steps() {
        return new GroupSteps(EvidenceReader.asking(bench.book)::readEach, group.group());
    }

    private static List<String> errors(Answer<?> answer) {
        return Books.codes(answer.problems().stream().filter(Problem::isError).toList());
    }

    /** Returns the codes of errors that are about some members, and of those that are about all. */
    private static List<String> inner(Answer<?> answer) {
        return answer.problems().stream()
                .filter(problem -> problem.code().equals("group.of-member"))
                .map(problem -> problem.values().get(0) + " "
                        + ((Problem) problem.values().get(1)).code())
                .toList();
    }

    private void keep(Answer<GroupSteps.Taken> answer) {
        assertThat(errors(answer)).isEmpty();
        assertThat(bench.book.keep(answer.value().orElseThrow().drafts(), "R. Vale", "step"))
                .isEmpty();
    }

    private FactorProposal draft(MixId mix) {
        return OpenProposal.of(group.of(mix)).orElseThrow().value();
    }

    /** Where the profile asks for drafts the factor of a group does not come into force in one step. */
    @Test
    void noFactorOfAGroupGoesRoundTheStepsThatTheProfileAsksFor() {
        Answer<GroupIssuing.Issued> before = group.decided(Bench.FIRST, Bench.START);
        ask("checked");
        assertThat(errors(group.decided(Bench.FIRST, Bench.START))).contains("issue.steps-needed");
        List<Draft> drafts =
                before.value().orElseThrow().issues().stream().map(Draft::of).toList();
        assertThat(Books.codes(bench.book.keep(drafts, "R. Vale", "why"))).contains("issue.steps-needed");
    }

    @Test
    void threePeopleBringTheFactorOfAGroupInForceForAllItsMembers() {
        FactorIssue inOneStep = group.decided(Bench.FIRST, Bench.START).value().orElseThrow().issues().stream()
                .filter(issue -> issue.mixId().equals(SECOND))
                .findFirst()
                .orElseThrow();
        ask("three");
        keep(drafting("R. Vale"));
        assertThat(MIXES).allSatisfy(mix -> {
            assertThat(draft(mix).step()).isEqualTo(Step.DRAFTED);
            assertThat(draft(mix).grounds().group()).contains(new GroupGround(new GroupId("G-1"), 1, Bench.MIX));
        });
        assertThat(draft(SECOND).isLent()).isTrue();
        assertThat(draft(Bench.MIX).isLent()).isFalse();
        assertThat(errors(steps().check("r. vale", "seen", NOW))).containsExactly("proposal.own-draft-checked");
        keep(steps().check("M. Ash", "seen", NOW));
        assertThat(errors(steps().check("T. Oak", "seen", NOW))).isNotEmpty();
        assertThat(errors(steps().putInForce("M. Ash", "", NOW))).contains("proposal.own-check-in-force");
        Answer<GroupSteps.Taken> last = steps().putInForce("T. Oak", "", NOW);
        assertThat(bench.book.keep(steps().stated(last.value().orElseThrow(), bench.scatter()), "T. Oak", "in force"))
                .isEmpty();
        assertThat(MIXES).allSatisfy(mix -> {
            FactorIssue issue = group.of(mix).newestIssue().orElseThrow();
            assertThat(List.of(issue.issuedBy(), issue.terms().checkedBy(), issue.approvedBy()))
                    .containsExactly("R. Vale", "M. Ash", "T. Oak");
            assertThat(issue.grounds().group().map(GroupGround::group)).contains(new GroupId("G-1"));
            assertThat(group.of(mix).stateOn(Bench.START)).isEqualTo(FactorState.IN_FORCE);
        });
        // A revision says the same uncertainty by either way.
        assertThat(group.of(SECOND).newestIssue().orElseThrow().grounds().uncertainty())
                .isPresent()
                .isEqualTo(inOneStep.grounds().uncertainty());
        assertThat(errors(steps().check("M. Ash", "", NOW))).containsExactly("proposal.none-of-group");
        assertThat(bench.book.verify()).isEmpty();
    }

    /** The uncertainty does not hang on whether the draft is put in force with the others or alone. */
    @Test
    void aDraftOfAGroupIsPutInForceAloneWithTheSameUncertainty() {
        FactorIssue inOneStep = group.decided(Bench.FIRST, Bench.START)
                .value()
                .orElseThrow()
                .issues()
                .get(1);
        ask("checked");
        keep(drafting("R. Vale"));
        Evidence second = group.of(SECOND);
        assertThat(second.determination(Bench.FIRST)).isPresent();
        Answer<Proposing.Taken> check = Proposing.check(second, "M. Ash", "seen", NOW);
        assertThat(bench.book.keep(check.value().orElseThrow().drafts(), "M. Ash", "check"))
                .isEmpty();
        Proposing.Taken put = Proposing.putInForce(group.of(SECOND), "M. Ash", "", NOW)
                .value()
                .orElseThrow();
        assertThat(bench.book.keep(
                        porebench.evidence.issue.IssueUncertainty.stated(
                                group.of(SECOND), bench.scatter(), put.drafts()),
                        "M. Ash",
                        "put"))
                .isEmpty();
        assertThat(group.of(SECOND).newestIssue().orElseThrow().grounds().uncertainty())
                .isPresent()
                .isEqualTo(inOneStep.grounds().uncertainty());
        assertThat(inner(steps().putInForce("M. Ash", "", NOW)))
                .containsExactly("M-1 proposal.not-checked", "M-3 proposal.not-checked");
    }

    /** M-3 moves to 45 % of sand, 5 points from M-1: its draft says so at each step, and the others wait for it. */
    @Test
    void aMemberThatDriftedOutStopsTheStepsAndIsNamed() {
        ask("checked");
        keep(drafting("R. Vale"));
        drift();
        Answer<GroupSteps.Taken> check = steps().check("M. Ash", "", NOW);
        assertThat(check.value()).isEmpty();
        assertThat(inner(check)).allMatch(said -> said.startsWith("M-3 ")).contains("M-3 proposal.evidence-changed");
        assertThat(check.problems().toString()).contains("drift");
        Answer<GroupSteps.Taken> again = drafting("R. Vale");
        assertThat(again.value().orElseThrow().leftOut())
                .extracting(GroupIssuing.LeftOut::mixId)
                .containsExactly(THIRD);
        Proposing.Taken dropped = Proposing.drop(group.of(THIRD), "M. Ash", "drifted", NOW)
                .value()
                .orElseThrow();
        assertThat(bench.book.keep(dropped.drafts(), "M. Ash", "drifted")).isEmpty();
        keep(steps().check("M. Ash", "", NOW));
        keep(steps().putInForce("M. Ash", "", NOW));
        assertThat(group.of(THIRD).newestIssue()).isEmpty();
        assertThat(group.of(SECOND).newestIssue()).isPresent();
    }

    private void drift() {
        Books.correct(bench.book, SampleGroups.mix("M-3", "787.5", "962.5"));
    }

    /** Somebody moves the design of a member after the step was decided and before it is kept. */
    @Test
    void theLabBookKeepsNoStepOfAMemberThatDriftedOutMeanwhile() {
        ask("checked");
        GroupSteps.Taken drafted = drafting("R. Vale").value().orElseThrow();
        drift();
        assertThat(Books.codes(bench.book.keep(drafted.drafts(), "R. Vale", "draft")))
                .contains("issue.evidence-changed-meanwhile");
    }

    @Test
    void aTrialOfTheTestedMixThatIsCorrectedStopsEveryDraft() {
        ask("checked");
        keep(drafting("R. Vale"));
        Books.correct(bench.book, Samples.trial("T-2", "M-1", "M-1/1", "5.5"));
        assertThat(errors(steps().check("M. Ash", "", NOW))).contains("proposal.evidence-changed");
        assertThat(errors(Proposing.check(group.of(SECOND), "M. Ash", "", NOW))).contains("proposal.evidence-changed");
        keep(drafting("T. Oak"));
        assertThat(group.of(SECOND).proposals()).hasSize(1);
        keep(steps().check("M. Ash", "", NOW));
    }

    @Test
    void whatIsSentBackForAllIsDraftedAnewForAllAndGivenUpForAll() {
        ask("three");
        keep(drafting("R. Vale"));
        keep(steps().check("M. Ash", "", NOW));
        assertThat(errors(drafting("R. Vale"))).contains("group.of-member");
        Proposing.Taken alone = Proposing.sendBack(group.of(SECOND), "T. Oak", "look again", NOW)
                .value()
                .orElseThrow();
        assertThat(bench.book.keep(alone.drafts(), "T. Oak", "look again")).isEmpty();
        assertThat(inner(steps().putInForce("T. Oak", "", NOW))).contains("M-2 proposal.not-checked");
        assertThat(errors(steps().sendBack("T. Oak", " ", NOW))).containsExactly("form.required");
        keep(steps().sendBack("T. Oak", "look again", NOW));
        assertThat(MIXES).allSatisfy(mix -> assertThat(draft(mix).step()).isEqualTo(Step.SENT_BACK));
        assertThat(errors(steps().sendBack("T. Oak", "again", NOW))).containsExactly("proposal.is-sent-back");
        keep(drafting("R. Vale"));
        assertThat(MIXES).allSatisfy(mix -> assertThat(draft(mix).number()).isEqualTo(1));
        keep(steps().drop("T. Oak", "not needed", NOW));
        assertThat(MIXES)
                .allSatisfy(mix -> assertThat(OpenProposal.of(group.of(mix))).isEmpty());
    }

    @Test
    void aDraftOfTheMixAloneIsNoneOfTheGroup() {
        ask("checked");
        Evidence own = group.of(Bench.MIX);
        Proposing.Taken alone = Proposing.draft(
                        own,
                        bench.scatter(),
                        bench.takingAll(
                                own,
                                new Issuing.Decision(
                                        Bench.FIRST, Bench.START, Optional.empty(), "R. Vale", "", "alone")),
                        NOW)
                .value()
                .orElseThrow();
        assertThat(bench.book.keep(alone.drafts(), "R. Vale", "alone")).isEmpty();
        assertThat(errors(steps().check("M. Ash", "", NOW))).containsExactly("proposal.none-of-group");
        assertThatThrownBy(() -> steps().stated(new GroupSteps.Taken(List.of(alone), List.of()), bench.scatter()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("M-1");
    }

    @Test
    void whereOnePersonIssuesNothingIsDraftedForAGroup() {
        assertThat(errors(drafting("R. Vale"))).contains("proposal.not-needed");
    }
}
