package porebench.store.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Role;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.store.SqliteShelf;

/** Who kept a version, when and why is told of each by itself, though they are read together and often say the same. */
class StampsTest {
    private static final Instant AT = Instant.parse("2026-11-29T12:45:07.012Z");

    @TempDir
    Path folder;

    @Test
    void versionsOfOneInstantKeepTheirOwnPersonAndReason() {
        try (LabBook book =
                new SqliteShelf(Clock.fixed(AT, ZoneOffset.UTC)).create(folder.resolve("stamps.porebench"))) {
            keep(book, "S-1", "R. Vale", "typed");
            keep(book, "S-2", "M. Ash", "typed");
            keep(book, "S-3", "M. Ash", "from a list");
            keep(book, "S-4", "M. Ash", "from a list");
            assertThat(book.latest(Source.class))
                    .extracting(version -> version.value().recordId() + ": "
                            + version.stamp().who() + ", " + version.stamp().why())
                    .containsExactly(
                            "S-1: R. Vale, typed",
                            "S-2: M. Ash, typed",
                            "S-3: M. Ash, from a list",
                            "S-4: M. Ash, from a list");
            assertThat(book.latest(Source.class))
                    .allSatisfy(version -> assertThat(version.stamp().at()).isEqualTo(AT));
        }
    }

    private static void keep(LabBook book, String id, String who, String why) {
        assertThat(book.keep(List.of(Draft.of(Samples.source(id, Role.FINE, "Ledge 1"))), who, why))
                .isEmpty();
    }
}
