package porebench.evidence.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.TimeBook;
import porebench.evidence.issue.DecidedOn;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.Proposing;
import porebench.evidence.issue.TakingOn;
import porebench.method.Answer;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.record.ChangeDecision;
import porebench.record.FactorIssue;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.statistics.comparison.ComparisonVerdict;

/** A factor that a decision keeps is drafted, checked and put in force; the decision is asked again at each step. */
class KeptDraftTest {
    private static final MixId MIX = new MixId("M-1");
    private static final DeterminationId AFTER = new DeterminationId("M-1/2");
    private static final LocalDate NEW = TimeBook.START.plusDays(60);
    private static final LocalDate DAY = NEW.plusDays(30);
    private static final LocalDateTime NOW = DAY.atTime(9, 0);
    /** Mean 0.42, reported 0.4. */
    private static final double[] OLD = {0.4, 0.5, 0.4, 0.4, 0.4, 0.4, 0.5, 0.4, 0.4, 0.4};
    /** Mean 0.46: it would be reported as 0.5. */
    private static final double[] NEARLY = {0.4, 0.5, 0.4, 0.5, 0.4, 0.5, 0.5, 0.5, 0.5, 0.4};

    private final TimeBook laboratory = new TimeBook();
    private ChangeDecisionId decision = new ChangeDecisionId("M-1/c1");

    @BeforeEach
    void decideToKeep() {
        laboratory.begin("M-1/1", "M-1");
        laboratory.trials("M-1/1", "M-1", TimeBook.START, OLD);
        Evidence evidence = evidence();
        Issuing.Decision first =
                decision(evidence, new DeterminationId("M-1/1"), TimeBook.START.plusDays(20), Optional.empty());
        laboratory.keep(Issuing.issue(evidence, scatter(), first).value().orElseThrow());
        laboratory.correct(
                Source.class, SampleSources.changed(Samples.source("S-2", Role.COARSE, "Ledge 2"), NEW.minusDays(1)));
        laboratory.begin("M-1/2", "M-1");
        laboratory.trials("M-1/2", "M-1", NEW, NEARLY);
        decision = decide(ComparisonVerdict.KEEP, "");
        laboratory.keep(new LaboratoryProfile(Profiles.standard()
                .copyAs("own", "Own rules")
                .with(FigureName.FACTOR_STEPS, new Figure("checked", "Own choice", Mark.LABORATORY))));
        MixDesign mix = evidence().mix().value();
        laboratory.correct(
                MixDesign.class,
                new MixDesign(
                        mix.id(),
                        mix.title(),
                        mix.batch(),
                        mix.soakMinutes(),
                        mix.airTolerancePercent(),
                        "own",
                        mix.remarks(),
                        mix.plant()));
    }

    private Evidence evidence() {
        return Evidence.of(laboratory.book, MIX).orElseThrow();
    }

    private LaboratoryScatter scatter() {
        return LaboratoryScatter.ofDeterminations(Evidence.ofAll(laboratory.book).stream()
                .flatMap(one -> one.determinations().stream())
                .toList());
    }

    private ChangeDecisionId decide(ComparisonVerdict choice, String reason) {
        SourceChange compared =
                SourceChange.of(evidence(), scatter(), 0.2).value().orElseThrow();
        ChangeDecision made = ChangeDeciding.decide(
                        evidence(), compared, new ChangeDeciding.Wish(choice, Optional.empty(), DAY, "R. Vale", reason))
                .value()
                .orElseThrow();
        laboratory.keep(made);
        return made.id();
    }

    private Issuing.Decision decision(
            Evidence evidence, DeterminationId id, LocalDate from, Optional<ChangeDecisionId> kept) {
        List<IssueDoubt> doubts = Issuing.doubts(evidence, scatter(), id);
        return new Issuing.Decision(
                        id,
                        from,
                        Optional.empty(),
                        "R. Vale",
                        "M. Ash",
                        "kept",
                        doubts.isEmpty()
                                ? Optional.empty()
                                : Optional.of(TakingOn.all("M. Ash", "looked at", doubts, Problem::code)))
                .asDecided(kept);
    }

    private Answer<Proposing.Taken> drafting(ChangeDecisionId by) {
        Evidence evidence = evidence();
        return Proposing.draft(evidence, scatter(), decision(evidence, AFTER, DAY, Optional.of(by)), NOW);
    }

    private void keep(Answer<Proposing.Taken> answer) {
        assertThat(answer.problems()).noneMatch(Problem::isError);
        Proposing.Taken taken = answer.value().orElseThrow();
        assertThat(DecidedOn.conflicts(taken.drafts(), laboratory.book)).isEmpty();
        assertThat(laboratory.book.keep(taken.drafts(), "R. Vale", "step")).isEmpty();
    }

    private static List<String> codes(Answer<?> answer) {
        return answer.problems().stream().map(Problem::code).toList();
    }

    /** The trials after the change would be reported as 0.5; the decision keeps 0.4. */
    @Test
    void aKeptFactorIsDraftedCheckedAndPutInForceWithItsDecision() {
        keep(drafting(decision));
        assertThat(evidence().proposals().get(0).value().grounds().keptBy()).contains(decision);
        keep(Proposing.check(evidence(), "M. Ash", "compared again", NOW));
        keep(Proposing.putInForce(evidence(), "M. Ash", "", NOW));
        FactorIssue issue = evidence().newestIssue().orElseThrow();
        assertThat(issue.factorPercent()).isEqualByComparingTo("0.4");
        assertThat(issue.determinationId()).isEqualTo(AFTER);
        assertThat(issue.grounds().keptBy()).contains(decision);
        assertThat(laboratory.book.verify()).isEmpty();
    }

    @Test
    void aDecisionThatIsNotThereKeepsNoDraft() {
        Answer<Proposing.Taken> answer = drafting(new ChangeDecisionId("M-1/c9"));
        assertThat(answer.value()).isEmpty();
        assertThat(codes(answer)).contains("keep.unknown");
    }

    @Test
    void aDecisionThatWasDecidedAgainStopsTheNextStep() {
        keep(drafting(decision));
        decide(ComparisonVerdict.REPLACE, "the number is to follow the trials");
        Answer<Proposing.Taken> check = Proposing.check(evidence(), "M. Ash", "", NOW);
        assertThat(check.value()).isEmpty();
        assertThat(codes(check)).contains("proposal.evidence-changed", "keep.decided-again");
    }

    /** An eleventh trial after the change: the comparison that was decided on is no longer the one there is. */
    @Test
    void newerTrialsOvertakeTheDecisionAndTheDraftSaysSo() {
        keep(drafting(decision));
        keep(Proposing.check(evidence(), "M. Ash", "", NOW));
        laboratory.trials("M-1/2", "M-1", NEW.plusDays(15), 0.6);
        Answer<Proposing.Taken> put = Proposing.putInForce(evidence(), "M. Ash", "", NOW);
        assertThat(put.value()).isEmpty();
        assertThat(codes(put)).contains("proposal.evidence-changed", "issue.rests-on-more", "keep.evidence-changed");
    }
}
