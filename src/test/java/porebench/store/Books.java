package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;

/** What the tests of the lab book share: a fixed clock, a shelf, and a way past the lab book to its file. */
public final class Books {
    public static final Instant NOON = Instant.parse("2026-03-02T12:00:00.123Z");
    public static final Clock CLOCK = Clock.fixed(NOON.plusNanos(456_789), ZoneOffset.UTC);
    public static final SqliteShelf SHELF = new SqliteShelf(CLOCK);

    /** A query of the tables of the history; the others are kept beside it and may be made anew. */
    public static final String TABLES_OF_THE_HISTORY =
            "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT IN"
                    + " ('schema_step', 'summary_state', 'register_summary', 'trials_summary', 'name_look', 'name_look_state')";

    private static @Nullable Path emptyBook;

    private Books() {}

    /**
     * Opens a new, empty lab book at a place: a copy of one that was made earlier in this run, for tests that are not about
     * making one. Making takes some ten times as long, and all copies share one identity.
     */
    public static synchronized LabBook fresh(Path file) {
        try {
            if (emptyBook == null) {
                Path made = Files.createTempDirectory("empty-book").resolve("empty.porebench");
                SHELF.create(made).close();
                made.toFile().deleteOnExit();
                emptyBook = made;
            }
            Files.copy(emptyBook, file);
            return SHELF.open(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Keeps new records, which must succeed. */
    public static void keep(LabBook book, Kept... values) {
        keep(book, Arrays.asList(values));
    }

    public static void keep(LabBook book, List<Kept> values) {
        assertThat(book.keep(values.stream().map(Draft::of).toList(), "R. Vale", "entered"))
                .isEmpty();
    }

    /** Corrects a record that is there, which must succeed. */
    @SuppressWarnings("unchecked")
    public static <T extends Kept> void correct(LabBook book, T corrected) {
        Class<T> kind = (Class<T>) corrected.getClass();
        Draft draft = Draft.correcting(book.latest(kind, corrected.recordId()).orElseThrow(), corrected);
        assertThat(book.keep(List.of(draft), "R. Vale", "corrected")).isEmpty();
    }

    public static List<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).toList();
    }

    /** Runs SQL on the file from outside, as another program would. */
    public static void sql(Path file, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }
}
