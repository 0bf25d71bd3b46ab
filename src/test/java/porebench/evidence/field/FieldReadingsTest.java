package porebench.evidence.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.air.AirVerdict;
import porebench.method.sample.Batch;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;
import porebench.record.FieldReading;
import porebench.record.MixDesign;
import porebench.record.SampleReadings;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.ReadingId;
import porebench.store.Books;
import porebench.store.SqliteShelf;

/**
 * What is made of readings of the mix of {@link Bench}: G 0.4 in force from 9 March 2026, air wanted 6.0 +- 1.5 % (the profile's
 * tolerance), reported to 0.1 %.
 */
class FieldReadingsTest {
    @TempDir
    Path folder;

    private final MovingClock clock = new MovingClock("2026-03-02");
    private LabBook book;
    private FactorIssue first;

    @BeforeEach
    void aFactorIsInForce() {
        Bench bench = new Bench(folder);
        first = bench.issue(Bench.START);
        bench.close();
        book = new SqliteShelf(clock).open(folder.resolve("book.porebench"));
    }

    @AfterEach
    void end() {
        book.close();
    }

    private Evidence evidence() {
        return Evidence.of(book, Bench.MIX).orElseThrow();
    }

    private LaboratoryScatter scatter() {
        return LaboratoryScatter.ofCounted(evidence().counted());
    }

    private FieldReadings readings(String... guard) {
        return new FieldReadings(
                book,
                mix -> Evidence.of(book, mix),
                this::scatter,
                guard.length == 0 ? Optional.empty() : Optional.of(new BigDecimal(guard[0])));
    }

    private static FieldReading at(String id, String moment, String gauge) {
        return SampleReadings.plain(id, "M-1", gauge).at(LocalDateTime.parse(moment));
    }

    private FieldOutcome of(String moment, String gauge, String... guard) {
        return readings(guard).notKept(List.of(at("r1", moment, gauge))).get(0);
    }

    private FieldOutcome kept(String id) {
        return readings().ofMix(Bench.MIX, Optional.empty(), Optional.empty()).stream()
                .filter(outcome -> outcome.reading().id().equals(new ReadingId(id)))
                .findFirst()
                .orElseThrow();
    }

    private static String said(FieldOutcome outcome) {
        return said(outcome.now());
    }

    private static String said(FieldFinding finding) {
        return finding.air()
                .map(air ->
                        "r" + air.issue().revision() + " " + air.airPercent().toPlainString() + " "
                                + air.reportedPercent().toPlainString() + " "
                                + air.verdict().map(AirVerdict::symbol).orElse("?"))
                .orElseGet(() -> finding.mark().orElseThrow().code());
    }

    private void keep(FactorIssue issue) {
        Books.keep(book, issue);
    }

    private FactorIssue issuing(DeterminationId determination, LocalDate from, FactorTerms terms) {
        Issuing.Decision decision = Bench.decision(determination, from);
        List<IssueDoubt> doubts = Issuing.doubts(evidence(), scatter(), determination);
        Issuing.Decision taken = new Issuing.Decision(
                decision.determinationId(),
                decision.inForceFrom(),
                decision.recheckBy(),
                decision.issuedBy(),
                decision.approvedBy(),
                decision.reason(),
                doubts.isEmpty() ? Optional.empty() : Optional.of(Bench.takingOn(doubts, "M. Ash", "looked at")));
        return Issuing.issue(evidence(), scatter(), taken.under(terms)).value().orElseThrow();
    }

    /** 5.45 - 0.4 = 5.05 is a tie and goes to the even 5.0 (ASTM E29, recalled); 4.9 - 0.4 = 4.5 is the limit itself. */
    @Test
    void isCorrectedAndReportedAndJudged() {
        assertThat(said(of("2026-03-10T09:30", "5.45"))).isEqualTo("r1 5.05 5.0 passes");
        assertThat(said(of("2026-03-10T09:30", "4.9"))).isEqualTo("r1 4.5 4.5 passes");
        assertThat(said(of("2026-03-10T09:30", "4.8"))).isEqualTo("r1 4.4 4.4 fails");
        assertThat(said(of("2026-03-10T09:30", "7.9"))).isEqualTo("r1 7.5 7.5 passes");
        assertThat(said(of("2026-03-10T09:30", "8.0"))).isEqualTo("r1 7.6 7.6 fails");
        FieldOutcome negative = of("2026-03-10T09:30", "0.2");
        assertThat(said(negative)).isEqualTo("r1 -0.2 -0.2 fails");
        assertThat(negative.problems()).extracting(Problem::code).containsExactly("air.negative");
    }

    @Test
    void outsideTheDaysOfAFactorItIsMarkedAndNotCorrected() {
        assertThat(said(of("2026-03-08T23:59", "5.5"))).isEqualTo("field.no-factor");
        assertThat(said(of("2026-03-09T00:00", "5.5"))).isEqualTo("r1 5.1 5.1 passes");
        LocalDate last = first.recheckBy();
        assertThat(said(of(last + "T23:59", "5.5"))).isEqualTo("r1 5.1 5.1 passes");
        FieldOutcome lapsed = of(last.plusDays(1) + "T00:00", "5.5");
        assertThat(said(lapsed)).isEqualTo("field.lapsed");
        assertThat(lapsed.air()).isEmpty();
        assertThat(lapsed.now().state()).isEqualTo(FactorState.LAPSED);
        assertThat(lapsed.problems()).extracting(Problem::code).containsExactly("field.lapsed");
    }

    @Test
    void aRevisionThatBeginsAtAnHourIsSubtractedFromThatMinuteOn() {
        keep(issuing(
                Bench.FIRST, LocalDate.of(2026, 3, 16), new FactorTerms(FactorTerms.time("14:30"), "dry weather", "")));
        assertThat(said(of("2026-03-16T14:29:59", "5.5"))).startsWith("r1 ");
        FieldOutcome after = of("2026-03-16T14:30", "5.5");
        assertThat(said(after)).startsWith("r2 ");
        assertThat(after.air().orElseThrow().issue().terms().conditions()).isEqualTo("dry weather");
    }

    @Test
    void aWithdrawnFactorIsNoneFromItsDayOn() {
        keep(Issuing.withdraw(evidence(), LocalDate.of(2026, 4, 1), "R. Vale", "pit closed")
                .value()
                .orElseThrow());
        assertThat(said(of("2026-03-31T23:59", "5.5"))).isEqualTo("r1 5.1 5.1 passes");
        assertThat(said(of("2026-04-01T00:00", "5.5"))).isEqualTo("field.withdrawn");
    }

    private void changeStone(String from) {
        Source stone = book.latest(Source.class, "S-2").orElseThrow().value();
        Source other = Samples.source("S-2", Role.COARSE, "Ledge 2");
        Books.correct(
                book,
                other.as(Optional.of(SourceStep.CHANGED), Optional.of(LocalDate.parse(from)), Optional.of("blasted")));
        assertThat(stone).isNotEqualTo(other);
    }

    @Test
    void anotherStoneEndsAFactorOnItsDay() {
        changeStone("2026-03-20");
        assertThat(said(of("2026-03-19T16:00", "5.5"))).isEqualTo("r1 5.1 5.1 passes");
        assertThat(said(of("2026-03-20T07:00", "5.5"))).isEqualTo("field.source-changed");
    }

    @Test
    void changedEvidenceEndsAFactorOnTheDayOnWhichItWasKeptAndIsSaidOfTheReadingsBefore() {
        clock.turnTo("2026-03-25");
        Books.correct(
                book, book.latest(Trial.class, "T-3").orElseThrow().value().struck("spilled"));
        FieldOutcome before = of("2026-03-24T16:00", "5.5");
        assertThat(said(before)).isEqualTo("r1 5.1 5.1 passes");
        assertThat(before.problems()).extracting(Problem::code).containsExactly("field.evidence-since");
        assertThat(said(of("2026-03-25T07:00", "5.5"))).isEqualTo("field.evidence-changed");
    }

    /** The reading was told as 5.5 - 0.4; the factor found later, 0.6 from a day before it, makes it 4.9. */
    @Test
    void aFactorCorrectedLaterIsToldBesideWhatWasSaidAtTheTime() {
        clock.turnTo("2026-03-20");
        Books.keep(book, at("r1", "2026-03-20T09:30", "5.5"), at("r2", "2026-03-12T09:30", "5.5"));
        assertThat(kept("r1").said()).isEmpty();
        clock.turnTo("2026-03-28");
        Books.keep(
                book,
                Samples.determination("M-1/2", "M-1"),
                Samples.trial("T-4", "M-1", "M-1/2", "5.6"),
                Samples.trial("T-5", "M-1", "M-1/2", "5.6"),
                Samples.trial("T-6", "M-1", "M-1/2", "5.6"));
        keep(issuing(new DeterminationId("M-1/2"), LocalDate.of(2026, 3, 15), FactorTerms.NONE));
        FieldOutcome corrected = kept("r1");
        assertThat(said(corrected)).isEqualTo("r2 4.9 4.9 passes");
        FieldOutcome.Said then = corrected.said().orElseThrow();
        assertThat(said(then.finding())).isEqualTo("r1 5.1 5.1 passes");
        assertThat(then.at()).isEqualTo("2026-03-20T12:00:00Z");
        assertThat(corrected.problems()).extracting(Problem::code).containsExactly("field.said-otherwise");
        assertThat(kept("r2").said()).isEmpty();
        assertThat(said(kept("r2"))).isEqualTo("r1 5.1 5.1 passes");
    }

    @Test
    void aStoneDeclaredLaterLeavesWhatWasSaidAtTheTime() {
        clock.turnTo("2026-03-20");
        Books.keep(book, at("r1", "2026-03-20T09:30", "5.5"));
        clock.turnTo("2026-03-28");
        changeStone("2026-03-18");
        assertThat(said(kept("r1"))).isEqualTo("field.source-changed");
        assertThat(said(kept("r1").said().orElseThrow().finding())).isEqualTo("r1 5.1 5.1 passes");
    }

    @Test
    void aCorrectedReadingIsToldBesideItsFirstVersion() {
        clock.turnTo("2026-03-20");
        Books.keep(book, at("r1", "2026-03-20T09:30", "5.5"));
        clock.turnTo("2026-03-21");
        Books.correct(book, at("r1", "2026-03-20T09:30", "5.7"));
        assertThat(said(kept("r1"))).isEqualTo("r1 5.3 5.3 passes");
        FieldOutcome.Said then = kept("r1").said().orElseThrow();
        assertThat(said(then.finding())).isEqualTo("r1 5.1 5.1 passes");
        assertThat(then.reading().gaugePercent()).isEqualByComparingTo("5.5");
    }

    /** 8.0 - 0.4 = 7.6 fails 6.0 +- 1.5 and passes 6.5 +- 1.5. */
    @Test
    void aLoadIsJudgedByTheMixAsItStoodWhenItsReadingWasKept() {
        clock.turnTo("2026-03-20");
        Books.keep(book, at("r1", "2026-03-20T09:30", "8.0"));
        clock.turnTo("2026-03-28");
        MixDesign mix = evidence().mix().value();
        Books.correct(
                book,
                new MixDesign(
                        mix.id(),
                        mix.title(),
                        new Batch(
                                mix.batch().constituents(),
                                mix.batch().volume(),
                                new BigDecimal("6.5"),
                                mix.batch().wetSieved()),
                        mix.soakMinutes(),
                        mix.airTolerancePercent(),
                        mix.profileId(),
                        mix.remarks(),
                        mix.plant()));
        Books.keep(book, at("r2", "2026-03-20T09:40", "8.0"));
        assertThat(said(kept("r1"))).isEqualTo("r1 7.6 7.6 fails");
        assertThat(said(kept("r2"))).isEqualTo("r1 7.6 7.6 passes");
        assertThat(said(of("2026-03-20T09:50", "8.0"))).isEqualTo("r1 7.6 7.6 passes");
    }

    /** With k = 2 the load passes up to 7.5 - 2 u; u is that of the budget, which other tests hold against a pencil. */
    @Test
    void aGuardBandDrawsTheLimitsIn() {
        FieldAir limit = of("2026-03-10T09:30", "7.9", "2").air().orElseThrow();
        double u = limit.standardPercent().orElseThrow();
        assertThat(u).isBetween(0.05, 0.7);
        assertThat(limit.expandedPercent().orElseThrow()).isGreaterThan(1.9 * u);
        assertThat(limit.limits().acceptedToPercent()).isCloseTo(7.5 - 2 * u, within(1e-9));
        assertThat(limit.verdict()).contains(AirVerdict.GUARDED);
        assertThat(limit.conforming().orElseThrow()).isBetween(0.49, 0.51);
        assertThat(said(of("2026-03-10T09:30", "6.4", "2"))).isEqualTo("r1 6.0 6.0 passes");
        assertThat(said(of("2026-03-10T09:30", "4.9", "2"))).isEqualTo("r1 4.5 4.5 guarded");
        assertThat(said(of("2026-03-10T09:30", "4.8", "2"))).isEqualTo("r1 4.4 4.4 fails");
    }

    @Test
    void aGuardBandThatLeavesNothingIsSaidAndTheLoadIsNotJudged() {
        FieldOutcome outcome = of("2026-03-10T09:30", "6.4", "10");
        assertThat(outcome.air().orElseThrow().verdict()).isEmpty();
        assertThat(outcome.problems()).extracting(Problem::code).containsExactly("field.guard-too-wide");
        assertThatThrownBy(() -> readings("0")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> readings("10.1")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aStruckReadingIsNotCorrected() {
        FieldReading struck = SampleReadings.full("r1", "M-1", "B-1");
        assertThat(said(readings().notKept(List.of(struck)).get(0))).isEqualTo("field.struck");
    }

    @Test
    void ofAMixThatIsNotThereNothingIsMade() {
        assertThat(readings().notKept(List.of(SampleReadings.plain("r1", "M-9", "5"))))
                .isEmpty();
    }

    @Test
    void readingsAreFoundBySpanAndByMix() {
        List<FieldReading> all = new ArrayList<>();
        for (String day : List.of("2026-03-12", "2026-03-10", "2026-03-11")) {
            all.add(at(day + "-a", day + "T00:00", "5.5"));
            all.add(at(day + "-b", day + "T23:59:59", "5.5"));
        }
        all.forEach(reading -> Books.keep(book, reading));
        LocalDate eleventh = LocalDate.of(2026, 3, 11);
        assertThat(readings().between(eleventh, eleventh))
                .extracting(outcome -> outcome.reading().recordId())
                .containsExactly("2026-03-11-a", "2026-03-11-b");
        assertThat(readings().between(eleventh.minusDays(1), eleventh.plusDays(1)))
                .extracting(outcome -> outcome.reading().recordId())
                .containsExactly(
                        "2026-03-10-a", "2026-03-10-b", "2026-03-11-a", "2026-03-11-b", "2026-03-12-a", "2026-03-12-b");
        assertThat(readings().ofMix(Bench.MIX, Optional.of(eleventh), Optional.of(eleventh)))
                .hasSize(2);
        assertThat(readings().ofMix(Bench.MIX, Optional.of(eleventh), Optional.empty()))
                .hasSize(4);
        assertThat(readings().ofMix(Bench.MIX, Optional.empty(), Optional.of(eleventh)))
                .hasSize(4);
        assertThat(readings().ofMix(new MixId("M-2"), Optional.empty(), Optional.empty()))
                .isEmpty();
    }

    /** The scale of B-1 is read to 0.10 % too; what its dial says is not known, which is said once for all. */
    @Test
    void onAMeterOfTheLaboratoryItsOwnDivisionCounts() {
        FieldReading on = SampleReadings.onMeter("r1", "M-1", "B-1", "5.5");
        FieldReading later = on.at(LocalDateTime.parse("2026-03-10T09:30"));
        List<FieldOutcome> outcomes = readings().notKept(List.of(later, at("r2", "2026-03-10T09:40", "5.5")));
        assertThat(outcomes)
                .extracting(FieldReadingsTest::said)
                .containsExactly("r1 5.1 5.1 passes", "r1 5.1 5.1 passes");
        assertThat(FieldReadings.omissions(outcomes)).extracting(Problem::code).containsOnlyOnce("budget.field-dial");
    }
}
