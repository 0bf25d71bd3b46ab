package porebench.evidence.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.record.Samples;
import porebench.store.Books;

/** How many mixes were covered on each day, counted by pencil. */
class CoverageTest {
    @TempDir
    Path folder;

    @Test
    void countsMixesAndThoseCoveredDayByDay() {
        try (Bench bench = new Bench(folder)) {
            // The mixes are kept on 2 March 2026, before the first day of the factor.
            LocalDate kept = LocalDate.of(2026, 3, 2);
            bench.issue(Bench.START);
            bench.withdraw(LocalDate.of(2026, 5, 4));
            Books.keep(bench.book, Samples.mix("M-2", "S-1", "S-2"));
            Coverage coverage = LaboratoryStanding.of(bench.book).coverage();
            assertThat(coverage.days())
                    .containsExactly(
                            new Coverage.Day(kept, 2, 0),
                            new Coverage.Day(Bench.START, 2, 1),
                            new Coverage.Day(LocalDate.of(2026, 5, 4), 2, 0));
            assertThat(coverage.on(kept.minusDays(1)).percent()).isEmpty();
            assertThat(coverage.on(kept).percent()).hasValue(0);
            assertThat(coverage.on(Bench.START).percent()).hasValue(50);
            assertThat(coverage.on(LocalDate.of(2026, 5, 3)).covered()).isEqualTo(1);
            assertThat(coverage.on(LocalDate.of(2026, 5, 4)).covered()).isZero();
            assertThat(new Coverage.Day(kept, 3, 2).percent().orElseThrow()).isCloseTo(66.6667, Offset.offset(1e-4));
        }
    }

    @Test
    void aMixCountsFromItsFirstFactorWhereThatWasBeforeItWasKept() {
        try (Bench bench = new Bench(folder)) {
            Books.keep(bench.book, Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 1, 5)));
            assertThat(LaboratoryStanding.of(bench.book).coverage().days())
                    .startsWith(new Coverage.Day(LocalDate.of(2026, 1, 5), 1, 1));
        }
    }

    @Test
    void aBookWithoutMixesHasNoDays() {
        assertThat(Coverage.of(List.of()).days()).isEmpty();
    }
}
