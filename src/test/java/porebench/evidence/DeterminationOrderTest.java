package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.record.Determination;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Determinations stand in the order in which they were begun, and those of one day in the order of their numbers. */
class DeterminationOrderTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private static Determination begun(int number, LocalDate day) {
        return new Determination(new DeterminationId("M-1/" + number), new MixId("M-1"), 1, Map.of(), day, "");
    }

    @Test
    void theTenthOfADayStandsBehindTheSecond() {
        try (LabBook book = Books.fresh(folder.resolve("book.porebench"))) {
            Books.keep(
                    book,
                    Samples.source("S-1", Role.FINE, "Ledge 1"),
                    Samples.source("S-2", Role.COARSE, "Ledge 1"),
                    Samples.meter("B-1", MeterType.B),
                    Samples.mix("M-1", "S-1", "S-2"));
            // Kept in no order: number 3 was begun a day before all others.
            for (int number : List.of(10, 2, 11, 1, 9)) {
                Books.keep(book, begun(number, DAY));
            }
            Books.keep(book, begun(3, DAY.minusDays(1)));
            Evidence evidence = Evidence.of(book, new MixId("M-1")).orElseThrow();
            assertThat(evidence.determinations())
                    .extracting(judged -> judged.determination().value().id().text())
                    .containsExactly("M-1/3", "M-1/1", "M-1/2", "M-1/9", "M-1/10", "M-1/11");
            assertThat(evidence.openDetermination()
                            .orElseThrow()
                            .determination()
                            .value()
                            .id()
                            .text())
                    .isEqualTo("M-1/11");
        }
    }
}
