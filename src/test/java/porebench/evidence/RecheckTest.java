package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.issue.Issuing;
import porebench.method.Answer;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.record.FactorIssue;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.SampleProduction;
import porebench.record.Samples;
import porebench.record.SourceMeasurement;
import porebench.record.id.MeasurementId;
import porebench.record.id.SourceId;
import porebench.store.Books;

/** The rules of a laboratory in a real lab book: state, register, coverage, and what is handed out. */
class RecheckTest {
    private static final LocalDate JULY = LocalDate.of(2026, 7, 10);

    @TempDir
    Path folder;

    private Bench bench;
    private Profile profile = Profiles.standard().copyAs("own", "Own");

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
        Books.keep(bench.book, new LaboratoryProfile(profile));
        Books.correct(bench.book, of("own", "700", "1050"));
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private static MixDesign of(String profile, String sand, String stone) {
        MixDesign mix = Samples.mix(
                "M-1",
                Samples.constituent("Sand", Role.FINE, "S-1", sand),
                Samples.constituent("Stone", Role.COARSE, "S-2", stone));
        return new MixDesign(
                mix.id(),
                mix.title(),
                mix.batch(),
                mix.soakMinutes(),
                mix.airTolerancePercent(),
                profile,
                mix.remarks(),
                mix.plant());
    }

    private void rule(FigureName name, String value) {
        profile = profile.with(name, new Figure(value, "our rule", Mark.LABORATORY));
        Books.correct(bench.book, new LaboratoryProfile(profile));
    }

    private void volume(String id, LocalDate day, String cubicMetres) {
        Books.keep(bench.book, SampleProduction.volume(id, "M-1", day, day, cubicMetres));
    }

    private void lot(String id, String lot) {
        Books.keep(
                bench.book,
                new SourceMeasurement(
                        new MeasurementId(id),
                        new SourceId("S-2"),
                        JULY,
                        "M. Ash",
                        lot,
                        Samples.some("2.65"),
                        Optional.empty(),
                        Optional.empty(),
                        ""));
    }

    private RegisterRow row(LocalDate day) {
        return RegisterRow.of(bench.evidence(), day);
    }

    private List<String> codes(LocalDate day) {
        return Books.codes(row(day).due());
    }

    /** 600 m3 of 1.75 t each are 1050 t. */
    @Test
    void theRegisterSaysWhatIsDueAndSinceWhenNothingMayBeUsed() {
        bench.issue(Bench.START);
        rule(FigureName.RECHECK_TONNES, "1000");
        assertThat(row(JULY).due()).isEmpty();
        volume("p1", JULY.minusDays(1), "520");
        volume("p2", JULY, "80");
        RegisterRow due = row(JULY.minusDays(1));
        assertThat(due.state()).isEqualTo(FactorState.RECHECK_DUE);
        assertThat(Books.codes(due.due())).containsExactly("register.recheck-tonnes");
        assertThat(due.missing()).noneMatch(problem -> problem.code().startsWith("register.recheck"));
        assertThat(due.uncoveredSince()).isEmpty();
        RegisterRow lapsed = row(JULY.plusDays(40));
        assertThat(lapsed.state()).isEqualTo(FactorState.LAPSED);
        assertThat(lapsed.due()).hasSize(1);
        assertThat(lapsed.missing()).containsAll(lapsed.due());
        assertThat(lapsed.uncoveredSince()).contains(JULY);
        assertThat(CoveredSpell.of(bench.evidence())).containsExactly(new CoveredSpell(Bench.START, JULY));
        assertThat(CardState.of(bench.evidence(), bench.evidence().newestIssue().orElseThrow(), Moments.endOf(JULY)))
                .isEqualTo(CardState.LAPSED);
    }

    /** A spell put right by a new version counts as it is now: 500 m3 are 875 t. */
    @Test
    void aCorrectedSpellCountsAsItIsNow() {
        bench.issue(Bench.START);
        rule(FigureName.RECHECK_TONNES, "1000");
        volume("p1", JULY, "5000");
        assertThat(row(JULY).state()).isEqualTo(FactorState.LAPSED);
        Books.correct(bench.book, SampleProduction.volume("p1", "M-1", JULY, JULY, "500"));
        assertThat(row(JULY).state()).isEqualTo(FactorState.IN_FORCE);
        assertThat(row(JULY).uncoveredSince()).isEmpty();
    }

    @Test
    void aNewSourcesLotsCountWhereTheProfileAsksForThem() {
        bench.issue(Bench.START);
        lot("S-2/m1", "Lot 7");
        assertThat(row(JULY).state()).isEqualTo(FactorState.IN_FORCE);
        rule(FigureName.RECHECK_LOTS, "1");
        assertThat(row(JULY.minusDays(1)).state()).isEqualTo(FactorState.IN_FORCE);
        assertThat(row(JULY).state()).isEqualTo(FactorState.LAPSED);
        assertThat(row(JULY).due())
                .containsExactly(Problem.warning("sources", "register.recheck-lots", 1, 1, "S-2", "2026-03-02"));
    }

    /** What makes a factor untrue goes before what makes it due, and both are said. */
    @Test
    void aChangedMixGoesBeforeALapsedOne() {
        bench.issue(Bench.START);
        rule(FigureName.RECHECK_TONNES, "1000");
        volume("p1", JULY, "5000");
        Books.correct(bench.book, of("own", "600", "1050"));
        assertThat(row(JULY).state()).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(codes(JULY)).containsExactly("register.recheck-tonnes");
    }

    /** Another trial, not another card, begins the count anew: the rules count since the newest trial behind the factor. */
    @Test
    void aCardIssuedAgainWithoutATrialIsWarnedOfAndDueAtOnce() {
        bench.issue(Bench.START);
        rule(FigureName.RECHECK_TONNES, "1000");
        volume("p1", JULY, "600");
        Answer<FactorIssue> again = bench.issuing(Bench.decision(Bench.FIRST, JULY.plusDays(1)));
        assertThat(Books.codes(again.problems())).contains("register.recheck-tonnes");
        bench.keep(again);
        assertThat(row(JULY.plusDays(1)).state()).isEqualTo(FactorState.LAPSED);
        assertThat(CoveredSpell.of(bench.evidence())).containsExactly(new CoveredSpell(Bench.START, JULY));
    }

    @Test
    void theDayOnTheCardEndsOnTheEveOfASeason() {
        rule(FigureName.RECHECK_SEASONS, "04-01,10-01");
        FactorIssue issue = bench.issue(Bench.START);
        assertThat(issue.recheckBy()).isEqualTo(LocalDate.of(2026, 3, 31));
        Answer<FactorIssue> later = bench.issuing(new Issuing.Decision(
                Bench.FIRST,
                LocalDate.of(2026, 3, 20),
                Optional.of(LocalDate.of(2026, 9, 30)),
                "R. Vale",
                "M. Ash",
                "longer"));
        assertThat(Books.codes(later.problems())).contains("issue.recheck-late");
        bench.keep(later);
        assertThat(row(LocalDate.of(2026, 3, 31)).state()).isEqualTo(FactorState.IN_FORCE);
        assertThat(codes(LocalDate.of(2026, 3, 31))).containsExactly("register.season-begins");
        assertThat(Books.codes(row(LocalDate.of(2026, 3, 31)).missing())).contains("register.season-begins");
        assertThat(row(LocalDate.of(2026, 4, 1)).state()).isEqualTo(FactorState.RECHECK_DUE);
        assertThat(codes(LocalDate.of(2026, 4, 1))).containsExactly("register.season-began");
    }

    /** Within two points of 40 and 60 %: 720 and 1050 kg hold, and the open determination goes on; 800 and 1050 do not. */
    @Test
    void proportionsMayDriftWithinTheTolerance() {
        bench.issue(Bench.START);
        Books.correct(bench.book, of("own", "720", "1050"));
        assertThat(row(JULY).state()).isEqualTo(FactorState.SOURCE_CHANGED);
        rule(FigureName.PROPORTION_TOLERANCE, "2");
        assertThat(row(JULY).state()).isEqualTo(FactorState.IN_FORCE);
        assertThat(CoveredSpell.of(bench.evidence()))
                .containsExactly(
                        new CoveredSpell(Bench.START, Bench.START.plusMonths(12).plusDays(1)));
        Evidence evidence = bench.evidence();
        assertThat(new DesignChange(evidence, of("own", "730", "1050")).endedFactor(JULY))
                .isEmpty();
        assertThat(new DesignChange(evidence, of("own", "800", "1050")).endedFactor(JULY))
                .isPresent();
        // Every small step is measured from what was tested, so that steps do not add up unseen.
        Books.correct(bench.book, of("own", "730", "1050"));
        Books.correct(bench.book, of("own", "760", "1050"));
        assertThat(row(JULY).state()).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(new DesignChange(bench.evidence(), of("own", "800", "1050")).endedFactor(JULY))
                .as("it ended before")
                .isEmpty();
    }

    @Test
    void anOpenDeterminationGoesOnWithinTheTolerance() {
        rule(FigureName.PROPORTION_TOLERANCE, "2");
        assertThat(bench.evidence().openDetermination()).isPresent();
        assertThat(new DesignChange(bench.evidence(), of("own", "720", "1050")).closedDetermination())
                .isEmpty();
        assertThat(new DesignChange(bench.evidence(), of("own", "800", "1050")).closedDetermination())
                .isPresent();
        Books.correct(bench.book, of("own", "720", "1050"));
        assertThat(bench.evidence().openDetermination()).isPresent();
    }

    /** Nothing is read of production and lots for a profile that asks for neither. */
    @Test
    void nothingIsReadThatNoRuleAsksFor() {
        volume("p1", JULY, "5000");
        lot("S-2/m1", "Lot 7");
        assertThat(bench.evidence().reported()).isEqualTo(Reported.NONE);
        rule(FigureName.RECHECK_LOTS, "1");
        assertThat(bench.evidence().reported().production()).isEmpty();
        assertThat(bench.evidence().reported().measured()).hasSize(2);
        rule(FigureName.RECHECK_LOTS, "0");
        rule(FigureName.RECHECK_PRODUCTION_DAYS, "1");
        assertThat(bench.evidence().reported().production()).hasSize(1);
        assertThat(Stream.of(bench.evidence(), Evidence.ofAll(bench.book).get(0))
                        .map(Evidence::reported))
                .allMatch(reported -> reported.measured().isEmpty());
    }
}
