package porebench.record.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.record.Samples;
import porebench.store.Books;
import porebench.store.SqliteShelf;

/** What a lab book says of itself when it is checked in full. */
class FullCheckTest {
    @TempDir
    Path folder;

    @Test
    void tellsOfAClockThatWentBackAndOfNothingElse() {
        Path file = folder.resolve("book.porebench");
        try (LabBook book = Books.fresh(file)) {
            Books.keep(book, Samples.meter("B-1", MeterType.B));
            assertThat(book.verify()).isEmpty();
        }
        Clock earlier = Clock.offset(Books.CLOCK, Duration.ofDays(-1));
        try (LabBook book = new SqliteShelf(earlier).open(file)) {
            Books.keep(book, Samples.meter("B-2", MeterType.B));
            assertThat(book.verify())
                    .hasSize(1)
                    .isEqualTo(book.check(Optional.empty()).problems());
            assertThat(book.verify()).noneMatch(Problem::isError);
        }
    }
}
