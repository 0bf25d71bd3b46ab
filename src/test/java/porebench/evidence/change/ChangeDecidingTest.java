package porebench.evidence.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.evidence.DecisionChanges;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.RegisterRow;
import porebench.evidence.TimeBook;
import porebench.evidence.issue.DecidedOn;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.KeptFactor;
import porebench.evidence.issue.TakingOn;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.ChangeDecision;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.statistics.comparison.ComparisonVerdict;

/** A person decides on the new ledge of the stone of M-1, whose factor 0.4 was issued from the old one. */
class ChangeDecidingTest {
    private static final MixId MIX = new MixId("M-1");
    private static final LocalDate NEW = TimeBook.START.plusDays(60);
    private static final LocalDate DAY = NEW.plusDays(30);
    private static final DeterminationId AFTER = new DeterminationId("M-1/2");
    /** Mean 0.42, scattering as a dial of 0.1 makes them. */
    private static final double[] OLD = {0.4, 0.5, 0.4, 0.4, 0.4, 0.4, 0.5, 0.4, 0.4, 0.4};
    /** Mean 0.46: it would be reported as 0.5. */
    private static final double[] NEARLY = {0.4, 0.5, 0.4, 0.5, 0.4, 0.5, 0.5, 0.5, 0.5, 0.4};

    private final TimeBook laboratory = new TimeBook();

    @BeforeEach
    void issueAndChange() {
        laboratory.begin("M-1/1", "M-1");
        laboratory.trials("M-1/1", "M-1", TimeBook.START, OLD);
        laboratory.keep(issue(Optional.empty(), "M-1/1", TimeBook.START.plusDays(20))
                .value()
                .orElseThrow());
        laboratory.correct(
                Source.class, SampleSources.changed(Samples.source("S-2", Role.COARSE, "Ledge 2"), NEW.minusDays(1)));
    }

    private void test(double... factors) {
        laboratory.begin("M-1/2", "M-1");
        laboratory.trials("M-1/2", "M-1", NEW, factors);
    }

    private Evidence evidence() {
        return Evidence.of(laboratory.book, MIX).orElseThrow();
    }

    private LaboratoryScatter scatter() {
        return LaboratoryScatter.ofDeterminations(Evidence.ofAll(laboratory.book).stream()
                .flatMap(one -> one.determinations().stream())
                .toList());
    }

    private SourceChange compared(double margin) {
        return SourceChange.of(evidence(), scatter(), margin).value().orElseThrow();
    }

    private Answer<ChangeDecision> decide(
            double margin, ComparisonVerdict choice, Optional<Integer> more, String by, String reason) {
        return ChangeDeciding.decide(
                evidence(), compared(margin), new ChangeDeciding.Wish(choice, more, DAY, by, reason));
    }

    private ChangeDecision keepIt(double margin) {
        ChangeDecision decision = decide(margin, ComparisonVerdict.KEEP, Optional.empty(), "R. Vale", "")
                .value()
                .orElseThrow();
        laboratory.keep(decision);
        return decision;
    }

    private Answer<FactorIssue> issue(Optional<ChangeDecisionId> asDecided, String determination, LocalDate from) {
        Evidence evidence = evidence();
        DeterminationId id = new DeterminationId(determination);
        List<IssueDoubt> doubts = Issuing.doubts(evidence, scatter(), id);
        return Issuing.issue(
                evidence,
                scatter(),
                new Issuing.Decision(
                                id,
                                from,
                                Optional.empty(),
                                "R. Vale",
                                "M. Ash",
                                "for a test",
                                doubts.isEmpty()
                                        ? Optional.empty()
                                        : Optional.of(TakingOn.all("M. Ash", "looked at", doubts, Problem::code)))
                        .asDecided(asDecided));
    }

    private static List<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).toList();
    }

    private List<String> missing() {
        List<String> codes = codes(RegisterRow.of(evidence(), DAY).missing());
        return codes.stream()
                .filter(code -> code.startsWith("register.decided") || code.equals("register.kept-by"))
                .toList();
    }

    /** Means 4.2/10 and 4.6/10 by pencil; the interval and the tests are those of the comparison itself, with six digits. */
    @Test
    void keepsTheComparisonAsItStoodWithWhatItRestsOn() {
        test(NEARLY);
        ChangeDecision decision = keepIt(0.2);
        assertThat(decision.id()).isEqualTo(new ChangeDecisionId("M-1/c1"));
        assertThat(decision.figures().meanBefore()).isEqualTo("0.42");
        assertThat(decision.figures().meanAfter()).isEqualTo("0.46");
        assertThat(decision.figures().difference()).isEqualTo("0.04");
        assertThat(decision.figures().margin()).isEqualTo("0.2");
        assertThat(decision.figures().trialsBefore()).isEqualTo(10);
        assertThat(decision.figures().verdict()).isEqualTo(ComparisonVerdict.KEEP);
        assertThat(decision.change().changedOn()).contains(NEW.minusDays(1));
        assertThat(decision.change().sourceVersions()).isEqualTo(Map.of(new SourceId("S-2"), 2));
        assertThat(decision.change().revision()).contains(1);
        assertThat(decision.change().before()).containsOnlyKeys(new DeterminationId("M-1/1"));
        assertThat(decision.change().after()).containsOnlyKeys(AFTER);
        assertThat(decision.change().trialVersions()).hasSize(20).containsValue(1);
        assertThat(evidence().decisions()).extracting(one -> one.value()).containsExactly(decision);
        assertThat(DecisionChanges.since(evidence(), decision)).isEmpty();
        assertThat(laboratory.book.verify()).isEmpty();
    }

    @Test
    void aDecisionAgainstTheComparisonNeedsAReasonAndSaysSo() {
        test(0.8, 0.9, 0.8);
        Answer<ChangeDecision> silent = decide(0.05, ComparisonVerdict.KEEP, Optional.empty(), "R. Vale", " ");
        assertThat(silent.value()).isEmpty();
        assertThat(codes(silent.problems())).containsExactly("decision.against-verdict", "decision.reason-wanting");
        Answer<ChangeDecision> said = decide(0.05, ComparisonVerdict.KEEP, Optional.empty(), "R. Vale", "spilled");
        assertThat(codes(said.problems())).containsExactly("decision.against-verdict");
        laboratory.keep(said.value().orElseThrow());
        assertThat(missing()).containsExactly("register.decided-keep", "register.decided-against");
        assertThat(codes(decide(0.05, ComparisonVerdict.REPLACE, Optional.empty(), "R. Vale", "")
                        .problems()))
                .isEmpty();
    }

    @Test
    void toTestMoreNeedsANumberAndNothingElseHasOne() {
        test(0.5, 0.6, 0.4);
        assertThat(codes(decide(0.05, ComparisonVerdict.TEST_MORE, Optional.empty(), "R. Vale", "")
                        .problems()))
                .containsExactly("decision.more-wanting");
        assertThat(codes(decide(0.05, ComparisonVerdict.REPLACE, Optional.of(2), "R. Vale", "at once")
                        .problems()))
                .containsExactly("decision.more-unasked", "decision.against-verdict");
        assertThat(codes(decide(0.05, ComparisonVerdict.TEST_MORE, Optional.of(2), " ", "")
                        .problems()))
                .containsExactly("form.required");
        laboratory.keep(decide(0.05, ComparisonVerdict.TEST_MORE, Optional.of(2), "R. Vale", "")
                .value()
                .orElseThrow());
        assertThat(missing()).containsExactly("register.decided-test-more");
        assertThat(ChangeDeciding.proposed(compared(0.05).comparison())).isEmpty();
        assertThat(compared(0.15).comparison().verdict()).isEqualTo(ComparisonVerdict.TEST_MORE);
        assertThat(ChangeDeciding.proposed(compared(0.15).comparison()))
                .hasValueSatisfying(more -> assertThat(more).isPositive());
    }

    @Test
    void theSameDecisionOnTheSameTrialsIsNotKeptTwice() {
        test(NEARLY);
        keepIt(0.2);
        assertThat(codes(decide(0.2, ComparisonVerdict.KEEP, Optional.empty(), "R. Vale", "")
                        .problems()))
                .containsExactly("decision.already-made");
        ChangeDecision other = decide(0.2, ComparisonVerdict.KEEP, Optional.empty(), "M. Ash", "")
                .value()
                .orElseThrow();
        assertThat(other.id()).isEqualTo(new ChangeDecisionId("M-1/c2"));
    }

    @Test
    void whatChangesAfterwardsIsSaidOfTheDecision() {
        test(NEARLY);
        ChangeDecision decision = keepIt(0.2);
        Trial struck =
                evidence().determinations().get(0).trials().get(3).trial().value();
        laboratory.correct(Trial.class, struck.struck("spilled"));
        assertThat(codes(DecisionChanges.since(evidence(), decision))).containsExactly("decision.trial-changed");
        assertThat(missing()).containsExactly("register.decided-keep", "register.decided-on-other");
        laboratory.trials("M-1/2", "M-1", NEW.plusDays(15), 0.4);
        laboratory.begin("M-1/3", "M-1");
        laboratory.trials("M-1/3", "M-1", NEW.plusDays(16), 0.4, 0.4);
        assertThat(codes(DecisionChanges.since(evidence(), decision)))
                .containsExactly("decision.determination-added", "decision.trial-changed", "decision.trial-added");
        laboratory.correct(
                Source.class, SampleSources.changed(Samples.source("S-2", Role.COARSE, "Ledge 3"), NEW.plusDays(20)));
        assertThat(codes(DecisionChanges.since(evidence(), decision))).contains("decision.source-changed");
        // Of the change after that nobody decided.
        assertThat(missing()).isEmpty();
    }

    /** 0.46 is reported as 0.5; kept is 0.4, as the decision says, on the new trials, so that the factor holds again. */
    @Test
    void aKeptFactorIsIssuedOnTheNewTrialsAndHolds() {
        test(NEARLY);
        ChangeDecision decision = keepIt(0.2);
        assertThat(evidence().stateOn(DAY)).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(KeptFactor.offered(evidence(), AFTER)).contains(decision);
        assertThat(KeptFactor.offered(evidence(), new DeterminationId("M-1/1"))).isEmpty();
        FactorIssue kept =
                issue(Optional.of(decision.id()), "M-1/2", DAY).value().orElseThrow();
        assertThat(kept.factorPercent()).isEqualByComparingTo("0.4");
        assertThat(kept.determinationId()).isEqualTo(AFTER);
        assertThat(kept.grounds().keptBy()).contains(decision.id());
        assertThat(issue(Optional.empty(), "M-1/2", DAY).value().orElseThrow().factorPercent())
                .isEqualByComparingTo("0.5");
        assertThat(DecidedOn.conflicts(List.of(Draft.of(kept)), laboratory.book))
                .isEmpty();
        laboratory.keep(kept);
        assertThat(evidence().stateOn(DAY)).isEqualTo(FactorState.IN_FORCE);
        assertThat(missing()).containsExactly("register.kept-by");
        assertThat(laboratory.book.verify()).isEmpty();
        // What is kept beside the entries says the same as they do.
        LaboratoryStanding standing = LaboratoryStanding.of(laboratory.book);
        assertThat(standing.rows(DAY)).contains(RegisterRow.of(evidence(), DAY));
    }

    @Test
    void theStandingHearsOfADecision() {
        test(NEARLY);
        LaboratoryStanding before = LaboratoryStanding.of(laboratory.book);
        keepIt(0.2);
        assertThat(before.renewed().rows(DAY)).contains(RegisterRow.of(evidence(), DAY));
        assertThat(missing()).containsExactly("register.decided-keep");
    }

    @Test
    void noFactorIsKeptWithoutADecisionThatBearsIt() {
        test(NEARLY);
        assertThat(codes(issue(Optional.of(new ChangeDecisionId("M-1/c9")), "M-1/2", DAY)
                        .problems()))
                .contains("keep.unknown");
        ChangeDecision against = decide(0.05, ComparisonVerdict.KEEP, Optional.empty(), "R. Vale", "we like it")
                .value()
                .orElseThrow();
        assertThat(against.isAgainstVerdict()).isTrue();
        laboratory.keep(against);
        assertThat(codes(issue(Optional.of(against.id()), "M-1/2", DAY).problems()))
                .contains("keep.not-shown");
        ChangeDecision elsewhere = decide(0.2, ComparisonVerdict.KEEP, Optional.empty(), "M. Ash", "")
                .value()
                .orElseThrow();
        laboratory.keep(elsewhere.from(FactorOrigin.IMPORTED));
        assertThat(codes(issue(Optional.of(elsewhere.id()), "M-1/2", DAY).problems()))
                .contains("keep.not-shown");
        ChangeDecision good = keepIt(0.2);
        assertThat(codes(issue(Optional.of(good.id()), "M-1/1", DAY).problems()))
                .contains("keep.other-determination");
        assertThat(issue(Optional.of(good.id()), "M-1/2", DAY).value()).isPresent();
        laboratory.keep(decide(0.2, ComparisonVerdict.REPLACE, Optional.empty(), "R. Vale", "to be sure")
                .value()
                .orElseThrow());
        assertThat(codes(issue(Optional.of(good.id()), "M-1/2", DAY).problems()))
                .contains("keep.decided-again");
    }

    @Test
    void aDecisionWhoseEvidenceChangedKeepsNothing() {
        test(NEARLY);
        ChangeDecision decision = keepIt(0.2);
        FactorIssue before =
                issue(Optional.of(decision.id()), "M-1/2", DAY).value().orElseThrow();
        Trial struck =
                evidence().determinations().get(0).trials().get(3).trial().value();
        laboratory.correct(Trial.class, struck.struck("spilled"));
        assertThat(codes(issue(Optional.of(decision.id()), "M-1/2", DAY).problems()))
                .contains("keep.evidence-changed", "decision.trial-changed");
        assertThat(KeptFactor.offered(evidence(), AFTER)).isEmpty();
        // It was decided while the trial still stood.
        assertThat(codes(DecidedOn.conflicts(List.of(Draft.of(before)), laboratory.book)))
                .contains("issue.evidence-changed-meanwhile", "keep.evidence-changed");
    }

    @Test
    void aDecisionAboutAMixWithoutFactorKeepsNone() {
        TimeBook other = new TimeBook();
        other.begin("M-1/1", "M-1");
        other.trials("M-1/1", "M-1", TimeBook.START, OLD);
        other.correct(Source.class, SampleSources.changed(Samples.source("S-2", Role.COARSE, "Ledge 2"), NEW));
        other.begin("M-1/2", "M-1");
        other.trials("M-1/2", "M-1", NEW, NEARLY);
        Evidence evidence = Evidence.of(other.book, MIX).orElseThrow();
        SourceChange change = SourceChange.of(evidence, scatter(), 0.2).value().orElseThrow();
        ChangeDecision decision = ChangeDeciding.decide(
                        evidence,
                        change,
                        new ChangeDeciding.Wish(ComparisonVerdict.KEEP, Optional.empty(), DAY, "R. Vale", ""))
                .value()
                .orElseThrow();
        assertThat(decision.change().revision()).isEmpty();
        other.keep(decision);
        assertThat(KeptFactor.offered(Evidence.of(other.book, MIX).orElseThrow(), AFTER))
                .isEmpty();
        assertThat(KeptFactor.factor(Evidence.of(other.book, MIX).orElseThrow(), decision.id()))
                .map(BigDecimal::doubleValue)
                .isEmpty();
    }

    /** What was issued on the new stone already did not stand before the change: there is nothing to keep. */
    @Test
    void aFactorOfTheNewStoneIsNotTheOneInQuestion() {
        test(NEARLY);
        laboratory.keep(issue(Optional.empty(), "M-1/2", DAY).value().orElseThrow());
        ChangeDecision decision = keepIt(0.2);
        assertThat(decision.change().revision()).isEmpty();
        assertThat(KeptFactor.offered(evidence(), AFTER)).isEmpty();
    }
}
