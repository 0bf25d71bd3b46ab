package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.record.Kept;
import porebench.record.LabBook;
import porebench.record.RecordKind;
import porebench.record.Samples;
import porebench.record.Stamp;
import porebench.record.Version;

class RoundTripTest {
    @TempDir
    Path folder;

    @Test
    void everyKindComesBackAsItWasKeptWithAllLeftOutOrAllFilled() {
        Path file = folder.resolve("book.porebench");
        List<Kept> kept = new ArrayList<>(Samples.bare());
        kept.addAll(Samples.full().subList(2, 9));
        try (LabBook book = Books.SHELF.create(file)) {
            Books.keep(book, kept);
        }
        try (LabBook book = Books.SHELF.open(file)) {
            Stamp stamp = new Stamp("R. Vale", Books.NOON, "entered");
            for (Kept value : kept) {
                assertThat(book.latest(value.kind().type(), value.recordId()))
                        .map(version -> (Object) version)
                        .contains(new Version<>(value, 1, stamp));
            }
            for (RecordKind kind : RecordKind.values()) {
                assertThat(book.latest(kind.type()))
                        .extracting(version -> (Kept) version.value())
                        .containsExactlyInAnyOrderElementsOf(kept.stream()
                                .filter(value -> value.kind() == kind)
                                .toList());
            }
            assertThat(book.verify()).isEmpty();
        }
    }
}
