package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.record.CardPrint;
import porebench.record.FieldReading;
import porebench.record.SampleReadings;
import porebench.record.book.LabBook;
import porebench.record.chain.Head;
import porebench.record.id.MixId;
import porebench.store.file.Steps;

/** A lab book from before field readings opens and keeps them. */
class FieldStepTest {
    @TempDir
    Path folder;

    @Test
    void aLabBookOfTheTwentyFirstStepTakesFieldReadingsFromThenOn() throws SQLException {
        Path old = folder.resolve("old.porebench");
        Head then;
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 21)).create(old)) {
            Books.keep(book, new CardPrint(new MixId("M-1"), 1, 1, "a6", CardPrint.PRINTER));
            then = book.head();
        }
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.head()).isEqualTo(then);
            Books.keep(book, SampleReadings.full("f1", "M-1", "B-1"));
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
        }
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.latest(FieldReading.class, "f1").orElseThrow().value())
                    .isEqualTo(SampleReadings.full("f1", "M-1", "B-1"));
        }
        assertThatThrownBy(() -> Books.sql(old, "UPDATE field_reading SET gauge_pct = '1'"))
                .hasMessageContaining("never changed");
        assertThatThrownBy(() -> Books.sql(old, "DELETE FROM field_reading")).hasMessageContaining("never removed");
    }
}
