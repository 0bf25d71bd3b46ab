package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.custody.CardAlarms;
import porebench.evidence.issue.Issuing;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.RegisterList;
import porebench.evidence.source.SourceTouch;
import porebench.evidence.source.TouchedMix;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;
import porebench.record.SourceStep;
import porebench.record.id.SourceId;
import porebench.store.Books;

/** A revision may begin at an hour of its first day; until then the one before it holds, for every question about that moment. */
class EffectiveHourTest {
    private static final LocalDate NEXT = Bench.START.plusDays(7);
    private static final LocalDateTime CHANGE = NEXT.atTime(14, 30);
    private static final LocalDateTime BEFORE = CHANGE.minusMinutes(1);

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

    private static FactorTerms at(String hour) {
        return new FactorTerms(FactorTerms.time(hour), "", "");
    }

    private Answer<FactorIssue> issuing(LocalDate from, FactorTerms terms) {
        Issuing.Decision decision = bench.takingAll(bench.evidence(), Bench.decision(Bench.FIRST, from))
                .under(terms);
        return Issuing.issue(bench.evidence(), bench.scatter(), decision);
    }

    private FactorIssue issue(LocalDate from, FactorTerms terms) {
        return bench.keep(issuing(from, terms));
    }

    @Test
    void untilItsMinuteTheRevisionBeforeHolds() {
        FactorIssue first = issue(Bench.START, FactorTerms.NONE);
        FactorIssue second = issue(NEXT, at("14:30"));
        Evidence evidence = bench.evidence();
        assertThat(evidence.inForceAt(BEFORE)).contains(first);
        assertThat(evidence.inForceAt(CHANGE)).contains(second);
        assertThat(CardState.of(evidence, first, BEFORE)).isEqualTo(CardState.IN_FORCE);
        assertThat(CardState.of(evidence, second, BEFORE)).isEqualTo(CardState.NOT_YET);
        assertThat(CardState.of(evidence, first, CHANGE)).isEqualTo(CardState.REPLACED);
        assertThat(CardState.of(evidence, second, CHANGE)).isEqualTo(CardState.IN_FORCE);
        assertThat(evidence.inForceOn(NEXT)).contains(second);
        assertThat(evidence.inForceOn(NEXT.minusDays(1))).contains(first);
    }

    @Test
    void theRegisterSaysWhatHoldsAtTheMinuteAndWhenItChanges() {
        issue(Bench.START, FactorTerms.NONE);
        issue(NEXT, new FactorTerms(FactorTerms.time("14:30"), "sand Alder only", ""));
        LaboratoryStanding worked = LaboratoryStanding.of(bench.book);
        // The second reading takes the lines that the first one kept in the lab book.
        for (LaboratoryStanding standing : List.of(worked, LaboratoryStanding.of(bench.book))) {
            assertThat(standing.rows(BEFORE).get(0).revision()).contains(1);
            assertThat(standing.rows(CHANGE).get(0).revision()).contains(2);
            assertThat(standing.rows(CHANGE).get(0).terms())
                    .isEqualTo(new FactorTerms(Optional.of(LocalTime.of(14, 30)), "sand Alder only", ""));
            assertThat(standing.rows(NEXT).get(0).revision()).contains(2);
            assertThat(standing.changesAfter(NEXT.atStartOfDay())).contains(CHANGE);
            assertThat(standing.coverage().on(NEXT).covered()).isEqualTo(1);
        }
    }

    private TouchedMix touched(Optional<SourceTouch.Wish> wish, LocalDateTime moment) {
        SourceId source = bench.evidence().mix().value().sources().iterator().next();
        return SourceTouch.of(bench.book, EvidenceReader.asking(bench.book)::readEach, source, wish, moment)
                .orElseThrow()
                .mixes()
                .get(0);
    }

    @Test
    void aSourceTouchesTheRevisionThatHoldsAtTheMinute() {
        issue(NEXT, at("14:30"));
        assertThat(touched(Optional.empty(), BEFORE).state()).isEqualTo(FactorState.NO_FACTOR);
        assertThat(touched(Optional.empty(), BEFORE).inForce()).isEmpty();
        assertThat(touched(Optional.empty(), CHANGE).state()).isEqualTo(FactorState.IN_FORCE);
        assertThat(touched(Optional.empty(), CHANGE).inForce()).isPresent();
        // A change on a day to come is looked at by the end of that day, when the revision of this afternoon holds.
        Optional<SourceTouch.Wish> later =
                Optional.of(new SourceTouch.Wish(SourceStep.CHANGED, Optional.of(NEXT.plusDays(2))));
        assertThat(touched(later, BEFORE).state()).isEqualTo(FactorState.NO_FACTOR);
        assertThat(touched(later, BEFORE).without()).isEqualTo(FactorState.IN_FORCE);
        assertThat(touched(later, BEFORE).becomesUntrue()).isTrue();
    }

    @Test
    void aRegisterOnPaperSaysItsHourUnlessItIsForTheWholeDay() {
        for (LocalDateTime moment : List.of(BEFORE, Moments.endOf(NEXT))) {
            RegisterList list = RegisterList.of(
                    Optional.empty(),
                    moment,
                    List.of(),
                    List.of(),
                    CardAlarms.NONE,
                    ProblemText.in(Locale.ENGLISH),
                    bench.book.head());
            assertThat(list.hour())
                    .isEqualTo(moment.equals(BEFORE) ? Optional.of(BEFORE.toLocalTime()) : Optional.empty());
        }
    }

    /** Revision 1 lapsed days ago: at eight the mix has no factor since then, though it will have one from two on. */
    @Test
    void beforeTheHourAMixIsUncoveredSinceTheFactorBeforeLapsed() {
        FactorIssue first = issue(Bench.START, FactorTerms.NONE);
        LocalDate day = first.recheckBy().plusDays(10);
        issue(day, at("14:00"));
        RegisterRow morning = RegisterRow.of(bench.evidence(), day.atTime(8, 0));
        assertThat(morning.state()).isEqualTo(FactorState.LAPSED);
        assertThat(morning.uncoveredSince()).contains(first.recheckBy().plusDays(1));
        assertThat(RegisterRow.of(bench.evidence(), day.atTime(14, 0)).state()).isEqualTo(FactorState.IN_FORCE);
        assertThat(LaboratoryStanding.of(bench.book).coverage().on(day).covered())
                .isEqualTo(1);
    }

    @Test
    void theFirstFactorOfAMixBeginsAtItsHour() {
        issue(Bench.START, at("07:05"));
        assertThat(bench.evidence().stateAt(Bench.START.atTime(7, 4))).isEqualTo(FactorState.NO_FACTOR);
        assertThat(RegisterRow.of(bench.evidence(), Bench.START.atTime(7, 4)).uncoveredSince())
                .isEmpty();
        assertThat(bench.evidence().stateAt(Bench.START.atTime(7, 5))).isEqualTo(FactorState.IN_FORCE);
        assertThat(CardState.refusal(bench.evidence(), Bench.START.atTime(7, 4)))
                .contains(Problem.error("factor", "issue.none-in-force", "M-1", "2026-03-09 07:04"));
        assertThat(CardState.refusal(bench.evidence(), Bench.START.atTime(7, 5)))
                .isEmpty();
    }

    @Test
    void theCardBeforeSaysUntilWhichHourItHolds() {
        FactorIssue first = issue(Bench.START, FactorTerms.NONE);
        issue(NEXT, at("14:30"));
        FactorCard card = FactorCard.of(bench.evidence(), first, Optional.empty(), bench.book.head(), BEFORE);
        assertThat(card.lastDay()).isEqualTo(NEXT);
        assertThat(card.until()).contains(LocalTime.of(14, 30));
    }

    @Test
    void aNextRevisionMayNotBeginBeforeTheHourOfTheLast() {
        issue(Bench.START, at("14:30"));
        assertThat(Books.codes(issuing(Bench.START, at("14:29")).problems())).contains("issue.starts-before-last");
        assertThat(Books.codes(issuing(Bench.START, FactorTerms.NONE).problems()))
                .contains("issue.starts-before-last");
        assertThat(issuing(Bench.START, at("14:31")).value()).isPresent();
    }

    /** The trials of the bench were made on one day; the last at an hour, before which no factor from them can hold. */
    @Test
    void anHourBeforeTheLastTrialIsRefused() {
        LocalDateTime last = bench.evidence().determination(Bench.FIRST).orElseThrow().trials().stream()
                .map(trial -> trial.trial().value().testedAt())
                .max(LocalDateTime::compareTo)
                .orElseThrow();
        LocalDate day = last.toLocalDate();
        LocalTime hour = last.toLocalTime();
        assertThat(Books.codes(issuing(day, new FactorTerms(Optional.of(hour.minusMinutes(1)), "", ""))
                        .problems()))
                .contains("issue.before-last-trial");
        assertThat(issuing(day, new FactorTerms(Optional.of(hour), "", "")).value())
                .isPresent();
        assertThat(issuing(day, FactorTerms.NONE).value()).isPresent();
    }

    @Test
    void conditionsOfMoreThanTwoHundredCharactersAreNotKept() {
        FactorIssue issue = issuing(Bench.START, new FactorTerms(Optional.empty(), "x".repeat(201), ""))
                .value()
                .orElseThrow();
        List<Problem> refused = bench.book.keep(List.of(porebench.record.book.Draft.of(issue)), "R. Vale", "why");
        assertThat(Books.codes(refused)).containsExactly("text.too-long");
    }

    @Test
    void aTimeOfDayIsHoursAndMinutes() {
        assertThat(FactorTerms.time("7:05")).contains(LocalTime.of(7, 5));
        assertThat(FactorTerms.time(" 14:30 ")).contains(LocalTime.of(14, 30));
        assertThat(FactorTerms.time("24:00")).isEmpty();
        assertThat(FactorTerms.time("7")).isEmpty();
        assertThat(FactorTerms.time("7:5")).isEmpty();
        assertThat(FactorTerms.written(LocalTime.of(7, 5))).isEqualTo("07:05");
    }
}
