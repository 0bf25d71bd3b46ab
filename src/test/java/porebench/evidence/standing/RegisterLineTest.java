package porebench.evidence.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.record.Samples;
import porebench.store.Books;

/** The line of a mix says on every day what working its row out on that day says. */
class RegisterLineTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(folder);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    @Test
    void theLineSaysOfEveryDayWhatIsWorkedOutThatDay() {
        Books.keep(
                bench.book,
                Samples.issue("M-1", 1, "M-1/1", FIRST.plusDays(40)),
                Samples.issue("M-1", 2, "M-1/1", FIRST.plusDays(300)));
        List<Evidence> all = Evidence.ofAll(bench.book);
        assertThat(all).isNotEmpty();
        for (Evidence evidence : all) {
            RegisterLine line = RegisterLine.of(evidence);
            RegisterLine again = RegisterLine.read(line.text());
            assertThat(again).isEqualTo(line).hasSameHashCodeAs(line);
            for (LocalDate day = FIRST.minusDays(3); day.isBefore(FIRST.plusYears(3)); day = day.plusDays(1)) {
                assertThat(line.on(day)).isEqualTo(RegisterRow.of(evidence, day));
                assertThat(again.on(day)).isEqualTo(line.on(day));
            }
            assertThat(line.on(LocalDate.MIN)).isEqualTo(RegisterRow.of(evidence, LocalDate.MIN));
        }
    }

    @Test
    void aFactorLapsesWithoutAnythingBeingKept() {
        Books.keep(bench.book, Samples.issue("M-1", 1, "M-1/1", FIRST));
        RegisterLine line = RegisterLine.of(Evidence.of(bench.book, Bench.MIX).orElseThrow());
        assertThat(line.on(FIRST.minusDays(1)).state()).isEqualTo(FactorState.NO_FACTOR);
        // One year from 1 January 2026: the last day is 1 January 2027.
        assertThat(line.on(FIRST.plusYears(1)).missing())
                .noneMatch(problem -> problem.code().equals("register.recheck-overdue"));
        assertThat(line.on(FIRST.plusYears(1).plusDays(1)).missing())
                .anyMatch(problem -> problem.code().equals("register.recheck-overdue"));
    }
}
