package porebench.evidence.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.TimeBook;
import porebench.method.Answer;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.store.Books;

/** What a factor that came in from a file must have before somebody can confirm it. */
class VerifyingTest {
    private static final MixId MIX = new MixId("M-1");

    private final TimeBook time = new TimeBook();
    /** The day of the last trial: a factor may hold from it. */
    private LocalDate last = TimeBook.START;

    private Evidence evidence() {
        return Evidence.of(time.book, MIX).orElseThrow();
    }

    /** A factor of 0.4 on three trials, from a file. */
    private void imported(LocalDate from) {
        time.begin("M-1/1", "M-1");
        last = time.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.4, 0.4).minusDays(1);
        time.book.holdAsBefore(Samples.issue("M-1", 1, "M-1/1", from).on(Grounds.NONE.from(FactorOrigin.IMPORTED)));
    }

    private Answer<FactorIssue> confirm(String who, String reason) {
        Evidence evidence = evidence();
        LaboratoryScatter scatter = LaboratoryScatter.ofCounted(Evidence.ofAll(time.book).stream()
                .flatMap(each -> each.counted().stream())
                .toList());
        List<IssueDoubt> doubts = evidence.determination(new DeterminationId("M-1/1"))
                .map(judged -> new IssueDoubts(evidence, judged).all(Issuing.stop(evidence, scatter, judged)))
                .orElseThrow();
        return Verifying.confirm(
                evidence,
                scatter,
                evidence.issues().get(0),
                who,
                reason,
                doubts.isEmpty() ? Optional.empty() : Optional.of(Bench.takingOn(doubts, "M. Ash", "looked at")));
    }

    private static List<String> errors(Answer<?> answer) {
        return answer.problems().stream()
                .filter(problem -> problem.isError())
                .map(problem -> problem.field() + " " + problem.code())
                .toList();
    }

    /** The same mix under a profile that asks for a second person. */
    private void askForASecondPerson() {
        time.keep(new LaboratoryProfile(Profiles.standard()
                .copyAs("two", "Two pairs of eyes")
                .with(FigureName.SECOND_PERSON, new Figure("yes", "Own choice", Mark.LABORATORY))));
        MixDesign mix = evidence().mix().value();
        time.correct(
                MixDesign.class,
                new MixDesign(
                        mix.id(),
                        mix.title(),
                        mix.batch(),
                        mix.soakMinutes(),
                        mix.airTolerancePercent(),
                        "two",
                        mix.remarks(),
                        Optional.empty()));
    }

    @Test
    void whoConfirmsSaysTheirNameAndWhy() {
        imported(TimeBook.START.plusDays(2));
        assertThat(confirm("M. Ash", "trials seen").value()).isPresent();
        assertThat(errors(confirm(" ", "trials seen"))).containsExactly("issuedBy form.required");
        assertThat(errors(confirm("M. Ash", " "))).containsExactly("reason form.required");
    }

    @Test
    void aFactorThatHeldBeforeItsLastTrialIsNotConfirmed() {
        imported(TimeBook.START.plusDays(1));
        assertThat(last).isEqualTo(TimeBook.START.plusDays(2));
        assertThat(errors(confirm("M. Ash", "trials seen"))).containsExactly("inForceFrom issue.before-evidence");
    }

    @Test
    void aProfileThatAsksForASecondPersonAsksItHereToo() {
        imported(TimeBook.START.plusDays(2));
        askForASecondPerson();
        assertThat(errors(confirm("M. Ash", "trials seen"))).containsExactly("approvedBy issue.second-person-missing");
        Evidence evidence = evidence();
        assertThat(Books.codes(
                        Verifying.unverified(evidence, evidence.issues().get(0).value())))
                .contains("issue.second-person-missing");
        assertThat(Verifying.unverified(evidence, evidence.issues().get(0).value()))
                .noneMatch(problem -> problem.isError());
    }

    @Test
    void whereEveryTrialIsStruckNothingIsConfirmed() {
        imported(TimeBook.START.plusDays(2));
        for (String id : List.of("T-001", "T-002", "T-003")) {
            time.correct(
                    Trial.class,
                    time.book.latest(Trial.class, id).orElseThrow().value().struck("spilled"));
        }
        assertThat(errors(confirm("M. Ash", "trials seen"))).containsExactly("determination issue.no-trial-counts");
    }

    @Test
    void aFactorOfATrainingBookSaysThatItsTrialsAreSimulated() {
        TimeBook training = new TimeBook(true);
        training.begin("M-1/1", "M-1");
        assertThat(Evidence.of(training.book, MIX).orElseThrow().isSimulated()).isFalse();
        LocalDate next = training.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.4, 0.4);
        Evidence evidence = Evidence.of(training.book, MIX).orElseThrow();
        assertThat(evidence.isSimulated()).isTrue();
        JudgedDetermination judged =
                evidence.determination(new DeterminationId("M-1/1")).orElseThrow();
        assertThat(Issuing.grounds(evidence, judged, List.of(), FactorOrigin.HERE)
                        .simulated())
                .isTrue();
        assertThat(next).isEqualTo(TimeBook.START.plusDays(3));
        imported(TimeBook.START.plusDays(2));
        assertThat(evidence().isSimulated()).isFalse();
        assertThat(confirm("M. Ash", "seen").value())
                .map(FactorIssue::isSimulated)
                .contains(false);
    }

    @Test
    void theEvidenceOfAMixKnowsItsSourcesItsMetersAndWhatIsOpen() {
        imported(TimeBook.START.plusDays(2));
        time.correct(Source.class, Samples.source("S-1", Role.FINE, "Ledge 1"));
        assertThat(evidence().sourceVersions()).isEqualTo(Map.of(new SourceId("S-1"), 2, new SourceId("S-2"), 1));
        assertThat(evidence().metersOn(TimeBook.START))
                .extracting(meter -> meter.id().text())
                .containsExactly("B-1", "B-2");
        assertThat(evidence().openDetermination()).isEmpty();
        time.begin("M-1/2", "M-1");
        assertThat(evidence().openDetermination())
                .map(judged -> judged.determination().value().id().text())
                .contains("M-1/2");
    }

    @Test
    void aWithdrawalIsNeverUntrue() {
        imported(TimeBook.START.plusDays(2));
        FactorIssue issue = evidence().issues().get(0).value();
        assertThat(evidence().whyUntrue(issue, Bench.START)).isNotEmpty();
        assertThat(evidence().whyUntrue(withdrawn(issue), Bench.START)).isEmpty();
    }

    private static FactorIssue withdrawn(FactorIssue issue) {
        return new FactorIssue(
                issue.mixId(),
                2,
                FactorIssue.Action.WITHDRAWN,
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
                Grounds.NONE);
    }
}
