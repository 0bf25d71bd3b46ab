package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.evidence.paper.FactorCard;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.FactorIssue;
import porebench.record.Samples;
import porebench.store.Books;

/** Which cards may leave as they are: those of a revision that is in force or due for its recheck, and no others. */
class CardStateTest {
    private static final LocalDate LATER = Bench.START.plusDays(7);

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

    private CardState state(FactorIssue issue, LocalDate day) {
        return CardState.of(bench.evidence(), issue, day.atTime(12, 0));
    }

    private FactorCard card(FactorIssue issue, LocalDate day) {
        return FactorCard.of(bench.evidence(), issue, Optional.empty(), bench.book.head(), day.atTime(12, 0));
    }

    @ParameterizedTest
    @EnumSource(CardState.class)
    void twoStatesMayLeaveUnmarked(CardState state) {
        assertThat(state.mayLeaveUnmarked()).isEqualTo(state == CardState.IN_FORCE || state == CardState.RECHECK_DUE);
    }

    /** Revision 1 holds 2026-03-09 to 2027-03-09; 30 days before its end is 2027-02-07. */
    @ParameterizedTest
    @CsvSource({
        "2026-03-08, NOT_YET",
        "2026-03-09, IN_FORCE",
        "2027-02-06, IN_FORCE",
        "2027-02-07, RECHECK_DUE",
        "2027-03-09, RECHECK_DUE",
        "2027-03-10, LAPSED",
    })
    void aCardFollowsTheDay(LocalDate day, CardState state) {
        FactorIssue issue = bench.issue(Bench.START);
        assertThat(state(issue, day)).isEqualTo(state);
        assertThat(card(issue, day).isMarked()).isEqualTo(!state.mayLeaveUnmarked());
        assertThat(CardState.refusal(bench.evidence(), issue, day.atTime(12, 0)).isPresent())
                .isEqualTo(!state.mayLeaveUnmarked());
    }

    @Test
    void whatTheLabBookDoesNotHoldIsNotIssuedAndStays() {
        FactorIssue issue = bench.issue(Bench.START);
        FactorIssue other = new FactorIssue(
                issue.mixId(),
                2,
                issue.action(),
                issue.factorPercent(),
                issue.determinationId(),
                issue.meterType(),
                issue.inForceFrom(),
                issue.recheckBy(),
                issue.issuedBy(),
                issue.approvedBy(),
                issue.reason(),
                issue.mixVersion(),
                issue.sourceVersions(),
                issue.profileId(),
                "",
                "",
                issue.grounds());
        assertThat(state(other, Bench.START)).isEqualTo(CardState.NOT_ISSUED);
        assertThat(card(other, Bench.START).isMarked()).isTrue();
        assertThat(CardState.refusal(bench.evidence(), other, Bench.START.atTime(12, 0)))
                .isPresent();
    }

    @Test
    void aLaterRevisionTakesOverOnItsDayAndTheEarlierCardSaysUntilWhen() {
        FactorIssue first = bench.issue(Bench.START);
        FactorIssue second = bench.issue(LATER);
        assertThat(state(first, LATER.minusDays(1))).isEqualTo(CardState.IN_FORCE);
        assertThat(state(second, LATER.minusDays(1))).isEqualTo(CardState.NOT_YET);
        assertThat(state(first, LATER)).isEqualTo(CardState.REPLACED);
        assertThat(state(second, LATER)).isEqualTo(CardState.IN_FORCE);
        assertThat(card(first, Bench.START).lastDay()).isEqualTo(LATER.minusDays(1));
        assertThat(card(second, LATER).lastDay()).isEqualTo(second.recheckBy());
        assertThat(CardState.refusal(bench.evidence(), LATER.minusDays(1).atTime(12, 0)))
                .isEmpty();
        assertThat(CardState.refusal(bench.evidence(), first, LATER.atTime(12, 0))
                        .map(Problem::code))
                .contains("issue.not-usable");
    }

    @Test
    void aWithdrawalEndsEveryCardBeforeIt() {
        FactorIssue first = bench.issue(Bench.START);
        FactorIssue second = bench.issue(LATER);
        LocalDate day = LATER.plusDays(10);
        bench.withdraw(day);
        assertThat(state(second, day.minusDays(1))).isEqualTo(CardState.IN_FORCE);
        assertThat(state(second, day)).isEqualTo(CardState.WITHDRAWN);
        assertThat(state(first, day)).isEqualTo(CardState.WITHDRAWN);
        assertThat(CardState.refusal(bench.evidence(), day.atTime(12, 0)).map(Problem::code))
                .contains("issue.none-in-force");
        assertThat(card(second, LATER).lastDay()).isEqualTo(day.minusDays(1));
    }

    @ParameterizedTest
    @EnumSource(FactorState.class)
    void aCardLeavesUnmarkedExactlyWhenItsFactorMayBeSubtracted(FactorState state) {
        assertThat(CardState.of(state).mayLeaveUnmarked()).isEqualTo(state.isUsable());
    }

    @Test
    void aChangedSourceOrTrialMarksTheCard() {
        FactorIssue issue = bench.issue(Bench.START);
        Books.correct(bench.book, Samples.source("S-2", Role.COARSE, "Ledge 2"));
        assertThat(state(issue, Bench.START)).isEqualTo(CardState.SOURCE_CHANGED);
        Books.correct(bench.book, Samples.source("S-2", Role.COARSE, "Ledge 1"));
        assertThat(state(issue, Bench.START)).isEqualTo(CardState.IN_FORCE);
    }

    @Test
    void withoutAnyRevisionNoCardLeaves() {
        assertThat(CardState.refusal(bench.evidence(), Bench.START.atTime(12, 0))
                        .map(Problem::code))
                .contains("issue.none-in-force");
    }

    @Test
    void aMixWhoseFactorLapsedGivesNoCardAndSaysWhichRevisionItWas() {
        FactorIssue issue = bench.issue(Bench.START);
        LocalDate late = issue.recheckBy().plusDays(1);
        assertThat(CardState.refusal(bench.evidence(), late.atTime(12, 0)))
                .contains(Problem.error("factor", "issue.not-usable", "M-1", CardState.LAPSED.word(), 1));
    }

    /** The word stands in files and in what the command line answers: other programs read it. */
    @Test
    void aStateHasItsWord() {
        assertThat(CardState.NOT_YET.symbol()).isEqualTo("not-yet");
        assertThat(CardState.WITHDRAWN.symbol()).isEqualTo("factor-withdrawn");
    }
}
