package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sqlite.SQLiteDataSource;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Kept;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.store.file.Session;
import porebench.store.file.SqliteFile;
import porebench.store.file.Steps;
import porebench.store.file.StoreException;

/** What is said, and what is safe, when the disk is full, locked, write-protected or failing, or the clock is wrong. */
class FailingDiskTest {
    private static final String NOT_KEPT =
            "The records could not be saved in book.porebench. None of them was, and what was there is "
                    + "unchanged. ";
    private static final Source SAND = Samples.source("S-1", Role.FINE, "Ledge 1");
    private static final Source STONE = Samples.source("S-2", Role.COARSE, "Ledge 1");

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void begin() {
        file = folder.resolve("book.porebench");
        try (LabBook book = Books.SHELF.create(file)) {
            Books.keep(book, SAND);
        }
    }

    private LabBook open(SQLiteDataSource source, String... pragmas) throws SQLException {
        Session session = new Session(source.getConnection());
        try (Statement statement = session.connection().createStatement()) {
            for (String pragma : pragmas) {
                statement.execute("PRAGMA " + pragma);
            }
        }
        return new SqliteLabBook(OpenFile.unnamed(file, Steps.ALL), session, Books.CLOCK);
    }

    private static void refuses(LabBook book, List<Kept> values, String words) {
        assertThatExceptionOfType(StoreException.class)
                .isThrownBy(() -> Books.keep(book, values))
                .withMessage(NOT_KEPT + words);
        assertThat(book.changeNumber()).isEqualTo(1);
    }

    @Test
    void aFullDiskIsSaidAndLosesNothing() throws SQLException {
        List<Kept> many = IntStream.range(10, 1000)
                .mapToObj(number -> (Kept) Samples.source("S-" + number, Role.FINE, "Ledge"))
                .toList();
        try (LabBook book = open(SqliteFile.existing(file), "max_page_count = 1")) {
            refuses(book, many, "The disk is full. Make room, or use another disk, and try again.");
        }
        try (LabBook book = Books.SHELF.open(file)) {
            Books.keep(book, many);
            assertThat(book.verify()).isEmpty();
        }
    }

    @Test
    void aLockedFileIsSaid() throws SQLException {
        try (Connection other = SqliteFile.existing(file).getConnection();
                LabBook book = open(SqliteFile.existing(file), "busy_timeout = 0")) {
            other.createStatement().execute("BEGIN IMMEDIATE");
            refuses(
                    book,
                    List.of(STONE),
                    "Another window or program is using the file. Close it there, or wait, and try again.");
            other.createStatement().execute("ROLLBACK");
            Books.keep(book, STONE);
        }
    }

    @Test
    void aWriteProtectedFileIsSaid() throws SQLException {
        try (LabBook book = open(SqliteFile.readOnly(file))) {
            refuses(
                    book,
                    List.of(STONE),
                    "The file, its folder or the disk is write-protected. Ask for permission to write, or use "
                            + "another folder.");
        }
    }

    /** No file may grow beyond 8 MiB there: the write fails in the middle of a batch. */
    @Test
    void aFailingDeviceIsSaidAndLosesNothingThatWasAcknowledged() throws IOException {
        List<String> said =
                OtherProgram.said(OtherProgram.startWithSmallFiles(8, OtherProgram.class, "fill", file.toString()));
        int kept = said.size() - 1;
        assertThat(kept).as(said.toString()).isPositive().isLessThan(100);
        assertThat(said.get(kept - 1)).isEqualTo("kept " + kept * 100);
        assertThat(said.get(kept))
                .startsWith(NOT_KEPT)
                .endsWith("The disk or the network failed while reading or writing. Check that it is connected "
                        + "and sound before you try again.");
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.verify()).isEmpty();
            assertThat(book.changeNumber()).isEqualTo(1 + kept * 100L);
        }
    }

    @Test
    void aLabBookInAReadOnlyFolderOpensForReading() throws IOException {
        SqliteShelf reader = new SqliteShelf(Books.CLOCK, Steps.ALL, any -> false);
        byte[] before = Files.readAllBytes(file);
        try (LabBook book = reader.open(file)) {
            assertThat(book.warnings()).containsExactly(Problem.warning("file", "book.read-only", "book.porebench"));
            assertThat(book.latest(Source.class)).hasSize(1);
            assertThat(book.check(Optional.of(book.head())).isIntact()).isTrue();
            assertThat(book.keep(List.of(Draft.of(STONE)), "R. Vale", "entered"))
                    .containsExactly(Problem.error("file", "book.read-only", "book.porebench"));
            try (Stream<Path> files = Files.list(folder)) {
                assertThat(files).containsExactly(file);
            }
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void theNewestRecordsInALogAreReadThereToo() throws IOException {
        Path crashed = folder.resolve("crashed.porebench");
        try (LabBook book = Books.SHELF.open(file)) {
            Books.keep(book, STONE);
            Files.copy(file, crashed);
            Files.copy(SqliteFile.logOf(file), SqliteFile.logOf(crashed));
        }
        try (LabBook book = new SqliteShelf(Books.CLOCK, Steps.ALL, any -> false).open(crashed)) {
            assertThat(book.latest(Source.class)).hasSize(2);
        }
    }

    /** Two minutes are put right by a time server every day; what is kept before that is told when opening, keeping, checking. */
    @ParameterizedTest
    @CsvSource({"119999, false", "120000, false", "120001, true", "86400000, true"})
    void aClockThatWentBackIsNoticed(long milliseconds, boolean noticed) {
        Clock earlier = Clock.fixed(Books.CLOCK.instant().minus(Duration.ofMillis(milliseconds)), ZoneOffset.UTC);
        try (LabBook book = new SqliteShelf(earlier).open(file)) {
            assertThat(Books.codes(book.warnings())).isEqualTo(noticed ? List.of("book.clock-is-behind") : List.of());
            Books.keep(book, STONE);
            assertThat(Books.codes(book.warnings()))
                    .isEqualTo(noticed ? List.of("book.clock-is-behind", "book.clock-is-back") : List.of());
            assertThat(Books.codes(book.check(Optional.empty()).doubts()))
                    .isEqualTo(noticed ? List.of("book.clock-was-back") : List.of());
            assertThat(book.check(Optional.empty()).isIntact()).isTrue();
        }
    }
}
