package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.Place;
import porebench.method.Role;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.Grounds;
import porebench.record.Kept;
import porebench.record.SampleCalibrations;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.id.DeterminationId;
import porebench.record.id.SourceId;
import porebench.store.Books;

/** What a file leaves open about versions is filled from the lab book, and what it says is held against it; nothing simulated comes in. */
class IntakeVersionsTest {
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

    private static Place line(int number) {
        return Place.of("file.csv", number);
    }

    private Intake.Result check(Kept... values) {
        return Intake.check(
                bench.book,
                IntStream.range(0, values.length)
                        .mapToObj(index -> new Incoming(line(index + 2), values[index]))
                        .toList(),
                SampleCalibrations.TODAY);
    }

    private static List<Kept> values(Intake.Result result) {
        return result.drafts().stream().map(Draft::value).toList();
    }

    @Test
    void aChangedTextThatNobodyCanReadIsRefusedAtItsPlace() {
        Intake.Result result =
                check(SampleSources.changed(Samples.source("S-1", Role.FINE, "Ledge \u202E2"), Bench.START));
        assertThat(result.problems().get(0).code()).isEqualTo("text.unseen");
        assertThat(result.problems().get(0).place()).contains(line(2));
    }

    @Test
    void aDeterminationWithoutVersionsHasThoseOfTheBookAndANewOneThoseOfToday() {
        Books.correct(bench.book, bench.newest(Determination.class, "M-1/1").madeWith(Map.of(new SourceId("S-1"), 1)));
        Books.correct(bench.book, Samples.source("S-1", Role.FINE, "Ledge 2"));
        Intake.Result result = check(
                new Determination(Bench.FIRST, Bench.MIX, 1, Map.of(), LocalDate.of(2026, 3, 2), "another purpose"),
                new Determination(
                        new DeterminationId("M-1/9"), Bench.MIX, 1, Map.of(), LocalDate.of(2026, 3, 2), "a new one"),
                new Determination(
                        new DeterminationId("M-1/8"),
                        Bench.MIX,
                        1,
                        Map.of(new SourceId("S-2"), 1),
                        LocalDate.of(2026, 3, 2),
                        "one with its own"));
        assertThat(values(result))
                .extracting(value -> ((Determination) value).sourceVersions())
                .containsExactly(
                        Map.of(new SourceId("S-1"), 1),
                        Map.of(new SourceId("S-1"), 2, new SourceId("S-2"), 1),
                        Map.of(new SourceId("S-2"), 1));
    }

    @Test
    void aRevisionThatNamesAnotherMixVersionIsNotTheSame() {
        FactorIssue issue = bench.issue(Bench.START);
        assertThat(check(issue.restingOn(0, Map.of())).alreadyThere()).isEqualTo(1);
        assertThat(Books.codes(check(issue.restingOn(issue.mixVersion() + 1, issue.sourceVersions()))
                        .problems()))
                .containsExactly("import.differs");
    }

    @Test
    void aSimulatedDeterminationOrFactorStaysOutOfARealBook() {
        Intake.Result result = check(
                Samples.determination("M-1/8", "M-1").simulated(true),
                Samples.issue("M-1", 1, "M-1/1", Bench.START).on(Grounds.NONE.simulated(true)));
        assertThat(Books.codes(result.problems())).containsExactly("book.simulated", "book.simulated");
        assertThat(result.drafts()).isEmpty();
        assertThat(Books.codes(bench.book.keep(
                        List.of(Draft.of(Samples.determination("M-1/8", "M-1").simulated(true))), "R. Vale", "x")))
                .containsExactly("book.simulated");
    }
}
