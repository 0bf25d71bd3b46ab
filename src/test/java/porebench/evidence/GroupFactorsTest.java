package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.group.GroupLook;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.Issuing;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Role;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.GroupGround;
import porebench.record.SampleGroups;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.id.DeterminationId;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;
import porebench.store.Books;

/**
 * Factors of a group. M-1 is tested: G 0.4, 0.4, 0.5, which is 0.4 in steps of 0.1, on 2 March 2026; it holds from 9 March. M-2 and
 * M-3 are of its sources, 41 and 42 % of sand to its 40 %; M-9 is in no group.
 */
class GroupFactorsTest {
    private static final LocalDate MAY = LocalDate.of(2026, 5, 4);
    private static final MixId SECOND = new MixId("M-2");
    private static final MixId THIRD = new MixId("M-3");

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
        bench.close();
    }

    private FactorState on(MixId mix, LocalDate day) {
        FactorState read = group.of(mix).stateOn(day);
        // What is kept beside the entries says the same.
        assertThat(LaboratoryStanding.of(bench.book).rows(day).stream()
                        .filter(row -> row.mixId().equals(mix))
                        .findFirst()
                        .orElseThrow())
                .isEqualTo(RegisterRow.of(group.of(mix), day));
        return read;
    }

    private List<String> why(MixId mix) {
        Evidence evidence = group.of(mix);
        return evidence.whyUntrue(evidence.newestIssue().orElseThrow(), MAY).stream()
                .map(ProblemText.in(Locale.ENGLISH)::say)
                .toList();
    }

    @Test
    void everyMemberGetsARevisionThatNamesTheGroupAndTheTestedMix() {
        List<FactorIssue> issues = group.issue();
        assertThat(issues).extracting(issue -> issue.mixId().text()).containsExactly("M-1", "M-2", "M-3");
        assertThat(issues).allSatisfy(issue -> {
            assertThat(issue.factorPercent()).isEqualTo(new BigDecimal("0.4"));
            assertThat(issue.determinationId()).isEqualTo(Bench.FIRST);
            assertThat(issue.grounds().group()).contains(new GroupGround(new GroupId("G-1"), 1, Bench.MIX));
            assertThat(issue.testedMix()).isEqualTo(Bench.MIX);
            assertThat(issue.mixVersion()).isEqualTo(1);
            assertThat(issue.grounds().trialVersions()).hasSize(3);
        });
        assertThat(issues.get(0).isLent()).isFalse();
        assertThat(issues.get(1).isLent()).isTrue();
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.IN_FORCE);
        assertThat(on(Bench.MIX, MAY)).isEqualTo(FactorState.IN_FORCE);
        RegisterRow row = RegisterRow.of(group.of(SECOND), MAY);
        assertThat(row.group()).contains(new GroupGround(new GroupId("G-1"), 1, Bench.MIX));
        assertThat(row.countedTrials()).isEqualTo(3);
        assertThat(group.of(new MixId("M-9")).issues()).isEmpty();
        assertThat(group.of(SECOND).counted()).isEmpty();
        assertThat(bench.book.verify()).isEmpty();
    }

    /** The factor that the tested mix has from these trials stays; one from others does not stand in the way. */
    @Test
    void theTestedMixIsNotIssuedTwiceFromTheSameTrials() {
        bench.issue(Bench.START);
        List<FactorIssue> issues = group.issue(Bench.FIRST, Bench.START.plusDays(7));
        assertThat(issues).extracting(issue -> issue.mixId().text()).containsExactly("M-2", "M-3");
        assertThat(on(SECOND, Bench.START)).isEqualTo(FactorState.NO_FACTOR);
        assertThat(on(SECOND, Bench.START.plusDays(7))).isEqualTo(FactorState.IN_FORCE);
        Answer<GroupIssuing.Issued> again = group.decided(Bench.FIRST, Bench.START.plusDays(7));
        assertThat(Books.codes(again.problems())).contains("issue.already-issued");
        assertThat(again.value()).isEmpty();
    }

    @Test
    void whoIsNotLikeIsLeftOutAndNamed() {
        Books.correct(bench.book, SampleGroups.mix("M-3", "787.5", "962.5"));
        Answer<GroupIssuing.Issued> answer = group.decided(Bench.FIRST, Bench.START);
        GroupIssuing.Issued issued = answer.value().orElseThrow();
        assertThat(issued.issues()).extracting(issue -> issue.mixId().text()).containsExactly("M-1", "M-2");
        assertThat(issued.leftOut()).extracting(GroupIssuing.LeftOut::mixId).containsExactly(THIRD);
        assertThat(group.issuing(Bench.FIRST).leftOut()).isEqualTo(issued.leftOut());
        assertThat(Books.codes(issued.leftOut().get(0).why())).containsOnly("register.drifted");
        assertThat(Books.codes(answer.problems())).contains("register.drifted");
        Books.correct(bench.book, SampleGroups.mix("M-2", "787.5", "962.5"));
        assertThat(Books.codes(group.decided(Bench.FIRST, Bench.START).problems()))
                .contains("group.nobody-like");
    }

    @Test
    void theOneGateHoldsForAll() {
        GroupIssuing issuing = group.issuing(Bench.FIRST);
        Answer<GroupIssuing.Issued> early = issuing.issue(new Issuing.Decision(
                Bench.FIRST, LocalDate.of(2026, 3, 1), Optional.empty(), "", "M. Ash", "", Optional.empty()));
        assertThat(early.value()).isEmpty();
        assertThat(Books.codes(early.problems())).contains("issue.before-evidence", "issue.doubts-open");
        assertThat(early.problems()).doesNotHaveDuplicates();
        assertThat(Books.codes(group.issuing(new DeterminationId("M-1/7"))
                        .issue(Bench.decision(new DeterminationId("M-1/7"), Bench.START))
                        .problems()))
                .containsExactly("issue.no-trial-counts");
    }

    /** A later revision of one member refuses an earlier day for the whole group, and says which. */
    @Test
    void aMemberThatHasALaterFactorRefusesTheDay() {
        group.issue(Bench.FIRST, MAY);
        Books.keep(
                bench.book,
                Issuing.withdraw(group.of(SECOND), MAY.plusDays(9), "R. Vale", "no longer made")
                        .value()
                        .orElseThrow());
        Answer<GroupIssuing.Issued> answer = group.decided(Bench.FIRST, MAY.plusDays(1));
        assertThat(answer.value()).isEmpty();
        Problem refused =
                answer.problems().stream().filter(Problem::isError).findFirst().orElseThrow();
        assertThat(refused.code()).isEqualTo("group.of-member");
        assertThat(refused.values().get(0)).isEqualTo("M-2");
    }

    @Test
    void withinTheToleranceAMemberMayChange() {
        group.issue();
        Books.correct(bench.book, SampleGroups.mix("M-2", "752.5", "997.5"));
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.IN_FORCE);
        Books.correct(bench.book, SampleGroups.mix("M-2", "752.6", "997.4"));
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(on(THIRD, MAY)).isEqualTo(FactorState.IN_FORCE);
        assertThat(on(Bench.MIX, MAY)).isEqualTo(FactorState.IN_FORCE);
        Books.correct(bench.book, SampleGroups.mix("M-2", "700", "1050"));
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.IN_FORCE);
    }

    @Test
    void aMemberThatDriftsOutSaysSo() {
        group.issue();
        Books.correct(bench.book, SampleGroups.mix("M-2", "770", "980"));
        assertThat(why(SECOND))
                .containsExactly(
                        "M-2 drifted out of group G-1: Source S-1 makes up 44.0 % of the aggregate of M-2 and "
                                + "40.0 % of that of M-1; the tolerance is 3 points. Leave one of the two out of "
                                + "the group.",
                        "M-2 drifted out of group G-1: Source S-2 makes up 56.0 % of the aggregate of M-2 and "
                                + "60.0 % of that of M-1; the tolerance is 3 points. Leave one of the two out of "
                                + "the group.");
        assertThat(Books.codes(RegisterRow.of(group.of(SECOND), MAY).missing())).contains("register.drifted");
    }

    /** The tested mix goes to 44 % of sand: M-2 with 41 % stands 3 points from it, M-3 with 46 % would be 6 from what was tested. */
    @Test
    void theTestedMixMayMoveAwayFromItsMembers() {
        group.issue();
        Books.correct(bench.book, SampleGroups.mix("M-1", "752.5", "997.5"));
        assertThat(on(Bench.MIX, MAY)).isEqualTo(FactorState.IN_FORCE);
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.IN_FORCE);
        Books.correct(bench.book, SampleGroups.mix("M-1", "773.5", "976.5"));
        // 44.2 % to the 40 % that were tested, the 41 % of M-2 and the 42 % of M-3.
        assertThat(on(Bench.MIX, MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(on(THIRD, MAY)).isEqualTo(FactorState.IN_FORCE);
        assertThat(why(SECOND).get(0)).contains("41.0 % of the aggregate of M-2 and 44.2 % of that of M-1");
        // M-3 follows it to 46 %: like the tested mix as it is, but not as it was tested.
        Books.correct(bench.book, SampleGroups.mix("M-3", "805", "945"));
        assertThat(on(THIRD, MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(why(THIRD).get(0)).contains("46.0 % of the aggregate of M-3 and 40.0 % of that of M-1");
    }

    @Test
    void anotherStoneOfASourceEndsTheFactorOfEveryMember() {
        group.issue();
        Books.correct(bench.book, SampleSources.changed(Samples.source("S-2", Role.COARSE, "Ledge 2"), MAY));
        for (MixId mix : List.of(Bench.MIX, SECOND, THIRD)) {
            assertThat(on(mix, MAY.minusDays(1))).isEqualTo(FactorState.IN_FORCE);
            assertThat(on(mix, MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        }
        assertThat(why(SECOND)).containsExactly("Source S-2 has changed since the factor was issued. Test again.");
    }

    @Test
    void aMemberThatTakesAnotherSourceDriftsOut() {
        group.issue();
        Books.keep(bench.book, Samples.source("S-3", Role.COARSE, "Ledge 1"));
        Books.correct(bench.book, Samples.mix("M-2", "S-1", "S-3"));
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(why(SECOND))
                .contains("M-2 drifted out of group G-1: Mix M-2 has aggregate of S-3, which mix M-1 has not. "
                        + "Leave one of the two out of the group.");
    }

    @Test
    void aTrialCorrectedOnTheTestedMixChangesTheEvidenceOfItsMembersOnly() {
        group.issue();
        long before = bench.book.changeNumber();
        Books.correct(bench.book, Samples.trial("T-1", "M-1", "M-1/1", "5.5"));
        assertThat(bench.book.touchedSince(before).mixes()).containsExactlyInAnyOrder(Bench.MIX, SECOND, THIRD);
        for (MixId mix : List.of(Bench.MIX, SECOND, THIRD)) {
            assertThat(on(mix, MAY)).isEqualTo(FactorState.EVIDENCE_CHANGED);
        }
        assertThat(why(SECOND).get(0)).startsWith("Trial T-1 was corrected");
        assertThat(group.issue(Bench.FIRST, MAY)).hasSize(3);
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.IN_FORCE);
    }

    @Test
    void aNewVersionOfTheGroupTouchesWhoHasItsFactor() {
        group.issue();
        long before = bench.book.changeNumber();
        Books.correct(bench.book, SampleGroups.within("G-1", "1.5", "M-2", "M-3"));
        assertThat(bench.book.touchedSince(before).mixes()).containsExactlyInAnyOrder(Bench.MIX, SECOND, THIRD);
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.IN_FORCE);
        assertThat(on(THIRD, MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        Books.correct(bench.book, SampleGroups.within("G-1", "1.5", "M-3"));
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(why(SECOND))
                .containsExactly(
                        "Mix M-2 is no longer a member of group G-1, since its version " + "3. Test the mix itself.");
    }

    /** A change of one member touches that one: nothing rests on it. */
    @Test
    void aMemberTouchesNobodyElse() {
        group.issue();
        long before = bench.book.changeNumber();
        Books.correct(bench.book, SampleGroups.mix("M-2", "700", "1050"));
        assertThat(bench.book.touchedSince(before).mixes()).containsExactly(SECOND);
    }

    @Test
    void aFactorWithdrawnFromTheTestedMixIsNotToBeUsedOnTheOthers() {
        group.issue();
        bench.withdraw(MAY);
        assertThat(on(SECOND, MAY.minusDays(1))).isEqualTo(FactorState.IN_FORCE);
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.EVIDENCE_CHANGED);
        assertThat(why(SECOND))
                .containsExactly(
                        "The factor was found on mix M-1, of which revision 2 withdrew it from 2026-05-04 on. Do "
                                + "not use it here, either.");
        assertThat(CoveredSpell.of(group.of(SECOND))).containsExactly(new CoveredSpell(Bench.START, MAY));
        // One for a member alone leaves the others.
        Books.keep(
                bench.book,
                Issuing.withdraw(group.of(THIRD), MAY, "R. Vale", "no longer made")
                        .value()
                        .orElseThrow());
        assertThat(on(THIRD, MAY)).isEqualTo(FactorState.WITHDRAWN);
        // Issued again from the same trials it holds again, for all.
        assertThat(group.issue(Bench.FIRST, MAY.plusDays(2))).hasSize(3);
        assertThat(on(SECOND, MAY.plusDays(2))).isEqualTo(FactorState.IN_FORCE);
    }

    @Test
    void aNewFactorOfTheTestedMixIsSaidOnTheOthersWhichStayTrue() {
        group.issue();
        retest("5.6", "5.6", "5.7");
        bench.keep(bench.issuing(Bench.decision(new DeterminationId("M-1/2"), MAY)));
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.IN_FORCE);
        Evidence evidence = group.of(SECOND);
        FactorIssue held = evidence.newestIssue().orElseThrow();
        assertThat(evidence.seenComing(held, MAY))
                .containsExactly(Problem.warning("factor", "register.tested-anew", "M-1", 2, "G-1"));
        assertThat(evidence.seenComing(held, MAY.minusDays(1))).isEmpty();
        assertThat(GroupLook.basis(bench.evidence(), Moments.endOf(MAY))).contains(new DeterminationId("M-1/2"));
        List<FactorIssue> issues = group.issue(new DeterminationId("M-1/2"), MAY);
        assertThat(issues).extracting(issue -> issue.mixId().text()).containsExactly("M-2", "M-3");
        assertThat(issues.get(0).factorPercent()).isEqualTo(new BigDecimal("0.6"));
        assertThat(group.of(SECOND).seenComing(issues.get(0), MAY)).isEmpty();
        assertThat(on(SECOND, MAY)).isEqualTo(FactorState.IN_FORCE);
        // The revision before stays, on its own trials.
        assertThat(group.of(SECOND).inForceOn(MAY.minusDays(1)).orElseThrow().factorPercent())
                .isEqualTo(new BigDecimal("0.4"));
        assertThat(on(SECOND, MAY.minusDays(1))).isEqualTo(FactorState.IN_FORCE);
    }

    private void retest(String... gauges) {
        List<porebench.record.Kept> records = new ArrayList<>(List.of(new Determination(
                new DeterminationId("M-1/2"),
                Bench.MIX,
                1,
                bench.evidence().sourceVersions(),
                LocalDate.of(2026, 3, 20),
                "again")));
        int number = 10;
        for (String gauge : gauges) {
            records.add(Samples.trial("T-" + number++, "M-1", "M-1/2", gauge));
        }
        Books.keep(bench.book, records);
    }

    /** A member alone may be issued for again from the trials that its factor rests on; it stays the factor of the group. */
    @Test
    void oneMemberIsIssuedForAgainFromTheSameTrials() {
        group.issue();
        Answer<FactorIssue> again = again(MAY);
        assertThat(again.value().orElseThrow().grounds().group())
                .contains(new GroupGround(new GroupId("G-1"), 1, Bench.MIX));
        Books.correct(bench.book, SampleGroups.mix("M-2", "770", "980"));
        Answer<FactorIssue> drifted = again(MAY);
        assertThat(drifted.value()).isEmpty();
        assertThat(Books.codes(drifted.problems())).contains("issue.drifted").doesNotContain("issue.doubts-open");
    }

    private Answer<FactorIssue> again(LocalDate from) {
        Evidence member = group.of(SECOND);
        return Issuing.issue(member, bench.scatter(), bench.takingAll(member, Bench.decision(Bench.FIRST, from)));
    }

    /** One reads, another changes a member, the first keeps. */
    @Test
    void aMemberThatDriftedMeanwhileRefusesAllOfThem() {
        List<FactorIssue> issues =
                group.decided(Bench.FIRST, Bench.START).value().orElseThrow().issues();
        Books.correct(bench.book, SampleGroups.mix("M-3", "787.5", "962.5"));
        List<Problem> problems = bench.book.keep(issues.stream().map(Draft::of).toList(), "R. Vale", "first factor");
        assertThat(Books.codes(problems)).contains("issue.evidence-changed-meanwhile", "register.drifted");
        assertThat(bench.book.latest(FactorIssue.class)).isEmpty();
    }

    /** The member was changed on the day the books are kept, 2 March: it is covered until the day of that change. */
    @Test
    void theTimeCoveredEndsWhereTheMemberDrifted() {
        group.issue();
        assertThat(CoveredSpell.of(group.of(SECOND))).hasSize(1);
        Books.correct(bench.book, SampleGroups.mix("M-2", "770", "980"));
        assertThat(CoveredSpell.of(group.of(SECOND))).isEmpty();
        assertThat(CoveredSpell.of(group.of(THIRD))).hasSize(1);
    }

    @Test
    void anotherStoryOfASourceIsSeenByMembersToo() {
        group.issue();
        Evidence member = group.of(SECOND);
        assertThat(member.with(member.stones().get(0)).lent()).isEqualTo(member.lent());
        assertThat(Map.copyOf(member.made())).containsKey(Bench.FIRST);
    }
}
