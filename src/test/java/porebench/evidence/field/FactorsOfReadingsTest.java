package porebench.evidence.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.GroupBench;
import porebench.evidence.issue.Issuing;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.air.AirVerdict;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.FieldReading;
import porebench.record.Grounds;
import porebench.record.Meter;
import porebench.record.SampleReadings;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.Books;
import porebench.store.SqliteShelf;

/** Readings under factors that are not simply found on the mix itself: lent, kept, from a file, on other scales. */
class FactorsOfReadingsTest {
    private static final LocalDateTime LATER = LocalDateTime.of(2026, 4, 1, 10, 0);

    @TempDir
    Path folder;

    private static FieldReadings readings(Bench bench, LabBook book, String... guard) {
        return new FieldReadings(
                book,
                mix -> Evidence.of(book, mix),
                bench::scatter,
                guard.length == 0 ? Optional.empty() : Optional.of(new BigDecimal(guard[0])));
    }

    private static FieldOutcome of(Bench bench, FieldReading reading, String... guard) {
        return readings(bench, bench.book, guard)
                .notKept(List.of(reading.at(LATER)))
                .get(0);
    }

    private static FactorIssue like(FactorIssue issue, int revision, String factor, Grounds grounds) {
        return new FactorIssue(
                issue.mixId(),
                revision,
                issue.action(),
                new BigDecimal(factor),
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
                grounds);
    }

    /** 5.5 - 0.4, the factor of the tested mix, until that one is withdrawn. */
    @Test
    void aLentFactorIsSubtractedUntilTheTestedMixLosesIt() {
        try (GroupBench group = new GroupBench(folder)) {
            group.issue();
            FieldOutcome lent = of(group.bench, SampleReadings.plain("r1", "M-2", "5.5"));
            assertThat(lent.air().orElseThrow().reportedPercent()).isEqualByComparingTo("5.1");
            assertThat(lent.air().orElseThrow().standardPercent()).isPresent();
            Books.keep(
                    group.book,
                    Issuing.withdraw(group.of(Bench.MIX), LocalDate.of(2026, 3, 30), "R. Vale", "pit closed")
                            .value()
                            .orElseThrow());
            FieldOutcome gone = of(group.bench, SampleReadings.plain("r1", "M-2", "5.5"));
            assertThat(gone.air()).isEmpty();
            assertThat(gone.now().state()).isEqualTo(FactorState.EVIDENCE_CHANGED);
            FieldReading before = SampleReadings.plain("r1", "M-2", "5.5").at(LocalDateTime.of(2026, 3, 29, 23, 0));
            List<FieldOutcome> both = readings(group.bench, group.book).notKept(List.of(before, before.at(LATER)));
            assertThat(both.get(0).air()).isPresent();
            assertThat(both.get(1).air()).isEmpty();
        }
    }

    /** The factor was 0.4; with T-1 at 5.9 its trials give (0.9 + 0.4 + 0.5) / 3 = 0.6, whose uncertainty is not that of 0.4. */
    @Test
    void aFactorThatItsTrialsNoLongerGiveHasNoUncertaintyAndNoGuardBand() {
        MovingClock clock = new MovingClock("2026-03-02");
        Bench bench = new Bench(folder);
        bench.issue(Bench.START);
        try (LabBook book = new SqliteShelf(clock).open(folder.resolve("book.porebench"))) {
            FieldReading reading = SampleReadings.plain("r1", "M-1", "5.5").at(LATER);
            assertThat(readings(bench, book, "2")
                            .notKept(List.of(reading))
                            .get(0)
                            .air()
                            .orElseThrow()
                            .standardPercent())
                    .isPresent();
            clock.turnTo("2026-04-05");
            Books.correct(book, Samples.trial("T-1", "M-1", "M-1/1", "5.9"));
            FieldOutcome outcome =
                    readings(bench, book, "2").notKept(List.of(reading)).get(0);
            FieldAir air = outcome.air().orElseThrow();
            assertThat(air.reportedPercent()).isEqualByComparingTo("5.1");
            assertThat(air.standardPercent()).isEmpty();
            assertThat(air.expandedPercent()).isEmpty();
            assertThat(air.conforming()).isEmpty();
            assertThat(air.verdict()).isEmpty();
            assertThat(outcome.problems())
                    .extracting(Problem::code)
                    .containsExactly("field.evidence-since", "field.guard-without-uncertainty");
            assertThat(readings(bench, book)
                            .notKept(List.of(reading))
                            .get(0)
                            .air()
                            .orElseThrow()
                            .verdict())
                    .contains(AirVerdict.PASSES);
        } finally {
            bench.close();
        }
    }

    /** From a file the factor is nobody's here; once it is confirmed it holds for the readings before, too. */
    @Test
    void aFactorFromAFileCorrectsNothingUntilItIsConfirmed() {
        MovingClock clock = new MovingClock("2026-03-02");
        Bench bench = new Bench(folder);
        FactorIssue first = bench.issue(Bench.START);
        bench.withdraw(LocalDate.of(2026, 3, 10));
        try (LabBook book = new SqliteShelf(clock).open(folder.resolve("book.porebench"))) {
            Books.keep(book, like(first, 3, "0.4", first.grounds().from(FactorOrigin.IMPORTED)));
            clock.turnTo("2026-04-01");
            Books.keep(book, SampleReadings.plain("r1", "M-1", "5.5").at(LATER));
            FieldReadings before = readings(bench, book);
            FieldOutcome marked =
                    before.ofMix(Bench.MIX, Optional.empty(), Optional.empty()).get(0);
            assertThat(marked.now().mark().map(Problem::code)).contains("field.not-verified");
            assertThat(marked.said()).isEmpty();
            clock.turnTo("2026-04-05");
            Books.correct(book, like(first, 3, "0.4", first.grounds().from(FactorOrigin.CONFIRMED)));
            FieldOutcome corrected = readings(bench, book)
                    .ofMix(Bench.MIX, Optional.empty(), Optional.empty())
                    .get(0);
            assertThat(corrected.air().orElseThrow().issue().revision()).isEqualTo(3);
            assertThat(corrected.said().orElseThrow().finding().state()).isEqualTo(FactorState.NOT_VERIFIED);
        } finally {
            bench.close();
        }
    }

    /**
     * Above 8 % air is reported to half a division (ASTM C231, recalled): 9.05 - 0.4 = 8.65 stays on the scale of the trials, which is
     * read to 0.1, and is 8.6 on one that is read to 0.2, the tie going to the even digit.
     */
    @Test
    void highAirIsReportedByTheDivisionOfTheMeterItWasReadOn() {
        try (Bench bench = new Bench(folder)) {
            bench.issue(Bench.START);
            Books.keep(
                    bench.book,
                    new Meter(
                            new MeterId("C-1"),
                            MeterType.B,
                            "",
                            Typed.of("7.050", VolumeUnit.LITRE),
                            new BigDecimal("0.2"),
                            new BigDecimal("10"),
                            true,
                            ""));
            assertThat(of(bench, SampleReadings.plain("r1", "M-1", "9.05"))
                            .air()
                            .orElseThrow()
                            .reportedPercent())
                    .isEqualByComparingTo("8.65");
            assertThat(of(bench, SampleReadings.onMeter("r1", "M-1", "C-1", "9.05"))
                            .air()
                            .orElseThrow()
                            .reportedPercent())
                    .isEqualByComparingTo("8.6");
        }
    }

    @Test
    void readingsOfSeveralMixesStandInTheOrderOfTheirTimes() {
        try (GroupBench group = new GroupBench(folder)) {
            group.issue();
            List<FieldOutcome> outcomes = readings(group.bench, group.book)
                    .notKept(List.of(
                            SampleReadings.plain("r3", "M-2", "5.5").at(LATER),
                            SampleReadings.plain("r2", "M-1", "5.5").at(LATER),
                            SampleReadings.plain("r1", "M-9", "5.5").at(LATER.minusDays(1))));
            assertThat(outcomes)
                    .extracting(outcome -> outcome.reading().recordId())
                    .containsExactly("r1", "r2", "r3");
            assertThat(outcomes.get(0).now().state()).isEqualTo(FactorState.NO_FACTOR);
            assertThat(outcomes.get(0).reading().mixId()).isEqualTo(new MixId("M-9"));
        }
    }
}
