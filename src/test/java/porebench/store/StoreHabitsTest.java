package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jdbi.v3.core.statement.SqlLogger;
import org.jdbi.v3.core.statement.SqlStatements;
import org.jdbi.v3.core.statement.StatementContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.store.file.Session;
import porebench.store.file.SqliteFile;
import porebench.store.file.Steps;

/** What must stay true of the store as it grows: the numbers of its steps, and how it reads. */
class StoreHabitsTest {
    @TempDir
    Path folder;

    @Test
    void theStepsAreNumberedWithoutGapsUpToTheNewest() throws IOException, URISyntaxException {
        List<Integer> numbers = new ArrayList<>();
        for (String location : Steps.ALL.locations()) {
            URL resource = StoreHabitsTest.class.getResource("/" + location.replace("classpath:", ""));
            assertThat(resource).isNotNull();
            try (Stream<Path> files = Files.list(Path.of(resource.toURI()))) {
                files.map(file -> file.getFileName().toString())
                        .map(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                        .forEach(numbers::add);
            }
        }
        assertThat(numbers)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.rangeClosed(1, Steps.ALL.newest()).boxed().toList());
    }

    @Test
    void readingManyRecordsTakesNoMoreQueriesThanReadingOne() throws SQLException {
        Path file = folder.resolve("book.porebench");
        try (LabBook book = Books.SHELF.create(file)) {
            Books.keep(book, Samples.mix("M-0", "S-1", "S-2"));
        }
        AtomicInteger queries = new AtomicInteger();
        Connection connection = SqliteFile.existing(file).getConnection();
        Session session = new Session(connection);
        session.read(handle -> handle.getConfig(SqlStatements.class).setSqlLogger(new SqlLogger() {
            @Override
            public void logBeforeExecution(StatementContext context) {
                queries.incrementAndGet();
            }
        }));
        try (LabBook book = new SqliteLabBook(OpenFile.unnamed(file, Steps.ALL), session, Books.CLOCK)) {
            queries.set(0);
            assertThat(book.latest(MixDesign.class)).hasSize(1);
            int forOne = queries.get();
            List<Kept> more = IntStream.range(1, 300)
                    .mapToObj(number -> (Kept) Samples.mix("M-" + number, "S-1", "S-2"))
                    .toList();
            Books.keep(book, more);
            queries.set(0);
            assertThat(book.latest(MixDesign.class)).hasSize(300);
            assertThat(queries.get()).isEqualTo(forOne).isPositive();
        }
    }

    @Test
    void commitsAreSyncedInFullAndRowsReferToEntries() throws SQLException {
        Path file = folder.resolve("book.porebench");
        Books.SHELF.create(file).close();
        try (Session session = new Session(SqliteFile.existing(file).getConnection())) {
            assertThat(pragma(session, "journal_mode")).isEqualTo("wal");
            assertThat(pragma(session, "synchronous")).isEqualTo("2");
            assertThat(pragma(session, "foreign_keys")).isEqualTo("1");
            assertThat(pragma(session, "busy_timeout")).isEqualTo("5000");
        }
    }

    private static String pragma(Session session, String name) {
        return session.read(handle ->
                handle.createQuery("PRAGMA " + name).mapTo(String.class).one());
    }
}
