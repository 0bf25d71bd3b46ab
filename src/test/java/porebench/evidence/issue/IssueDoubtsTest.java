package porebench.evidence.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import porebench.evidence.Evidence;
import porebench.evidence.TimeBook;
import porebench.method.Problem;
import porebench.method.trial.NextTrial;
import porebench.method.trial.StopRule;
import porebench.record.Samples;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/** What the stop rule adds to the doubts of a determination, and what a person takes on. */
class IssueDoubtsTest {
    private final TimeBook time = new TimeBook();

    private IssueDoubts doubts(double... factors) {
        time.begin("M-1/1", "M-1");
        time.trials("M-1/1", "M-1", TimeBook.START, factors);
        Evidence evidence = Evidence.of(time.book, new MixId("M-1")).orElseThrow();
        return new IssueDoubts(
                evidence, evidence.determination(new DeterminationId("M-1/1")).orElseThrow());
    }

    private static StopRule more(boolean forTheCountOnly, Optional<NextTrial> next) {
        return new StopRule(
                StopRule.Advice.MORE,
                2,
                4,
                forTheCountOnly,
                OptionalDouble.of(0.2),
                0.1,
                Optional.empty(),
                Optional.empty(),
                next);
    }

    private static Optional<NextTrial> next(String card, String low, String high) {
        return Optional.of(
                new NextTrial(0.3, 0.6, Samples.number(card), Samples.number(low), Samples.number(high), 0.5));
    }

    private static List<String> aboutAll(IssueDoubts doubts, StopRule rule) {
        return doubts.all(Optional.of(rule)).stream()
                .filter(doubt -> doubt.trial().isEmpty())
                .map(doubt -> doubt.problem().code())
                .toList();
    }

    @Test
    void thatTrialsAreFewIsSaidOnce() {
        IssueDoubts few = doubts(0.4, 0.4);
        assertThat(aboutAll(few, more(true, Optional.empty()))).containsExactly("determination.few-trials");
        assertThat(aboutAll(few, more(false, Optional.empty())))
                .containsExactly("determination.few-trials", "issue.stop-more");
    }

    @Test
    void whereTrialsAreNotFewTheStopRuleSpeaks() {
        IssueDoubts enough = doubts(0.4, 0.4, 0.4);
        assertThat(aboutAll(enough, more(true, Optional.empty()))).containsExactly("issue.stop-more");
    }

    /** Three trials are enough in number; that their factor is negative has nothing to do with it. */
    @Test
    void anotherDoubtAboutTheMeanDoesNotSilenceTheStopRule() {
        IssueDoubts negative = doubts(-0.2, -0.2, -0.2);
        assertThat(aboutAll(negative, more(true, Optional.empty())))
                .containsExactly("determination.factor-negative", "issue.stop-more");
    }

    @Test
    void oneMoreTrialIsSaidToChangeTheCardOnlyWhereItCould() {
        IssueDoubts enough = doubts(0.4, 0.4, 0.4);
        assertThat(aboutAll(enough, more(false, next("0.4", "0.4", "0.4")))).containsExactly("issue.stop-more");
        assertThat(aboutAll(enough, more(false, next("0.4", "0.4", "0.5"))))
                .containsExactly("issue.stop-more-could-change");
        assertThat(aboutAll(enough, more(false, next("0.4", "0.3", "0.4"))))
                .containsExactly("issue.stop-more-could-change");
    }

    /** A trial can be doubted twice for the same thing, as for two masses that are missing. */
    @Test
    void doubtsOfOneKindAreTakenOnTogetherWithTheWordsOfBoth() {
        IssueDoubt fine = IssueDoubt.ofAll(Problem.warning("masses", "trial.masses-missing", "fine"));
        IssueDoubt coarse = IssueDoubt.ofAll(Problem.warning("masses", "trial.masses-missing", "coarse"));
        TakingOn taking = TakingOn.all(
                "M. Ash",
                "looked at",
                List.of(fine, coarse),
                problem -> String.valueOf(problem.values().get(0)));
        assertThat(taking.doubts().values()).containsExactly("fine coarse");
    }

    @Test
    void whoTakesOnDoubtsWhereThereAreNoneIsTold() {
        List<Problem> said = new ArrayList<>();
        TakingOn nothing = TakingOn.all("M. Ash", "looked at", List.of(), Problem::code);
        assertThat(TakingOn.takeOn(said, List.of(), Optional.of(nothing))).isEmpty();
        assertThat(said).containsExactly(Problem.warning("override", "issue.override-not-needed"));
        said.clear();
        assertThat(TakingOn.takeOn(said, List.of(), Optional.empty())).isEmpty();
        assertThat(said).isEmpty();
    }
}
