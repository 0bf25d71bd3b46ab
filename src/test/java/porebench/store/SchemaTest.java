package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Role;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.SampleCards;
import porebench.record.SampleDecisions;
import porebench.record.SampleGroups;
import porebench.record.SamplePhotos;
import porebench.record.SamplePlans;
import porebench.record.SampleProduction;
import porebench.record.SampleProposals;
import porebench.record.SampleReadings;
import porebench.record.SampleSources;
import porebench.record.SampleStudies;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.BookCheck;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Stamp;
import porebench.record.chain.Head;
import porebench.store.chain.ChainEnd;
import porebench.store.chain.Entry;
import porebench.store.chain.EntryTable;
import porebench.store.file.Session;

/** That tables, views and triggers are what the steps make of them, and that a noted head shows what no chain can. */
class SchemaTest {
    @TempDir
    Path folder;

    private Path file;
    private Head before;

    @BeforeEach
    void begin() {
        file = folder.resolve("book.porebench");
        try (LabBook book = Books.SHELF.create(file)) {
            Books.keep(book, Samples.full());
            before = book.head();
        }
    }

    private List<String> strings(String query) throws SQLException {
        return strings(file, query);
    }

    private static List<String> strings(Path file, String query) throws SQLException {
        List<String> strings = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            while (row.next()) {
                strings.add(row.getString(1));
            }
        }
        return strings;
    }

    private void withoutTriggers(String... statements) throws SQLException {
        List<String> all = new ArrayList<>(List.of("PRAGMA foreign_keys = OFF"));
        List<String> triggers = strings("SELECT sql FROM sqlite_master WHERE type = 'trigger'");
        strings("SELECT name FROM sqlite_master WHERE type = 'trigger'")
                .forEach(name -> all.add("DROP TRIGGER " + name));
        all.addAll(List.of(statements));
        all.addAll(triggers);
        Books.sql(file, all.toArray(String[]::new));
    }

    private BookCheck check(Optional<Head> noted) {
        try (LabBook book = Books.SHELF.open(file)) {
            return book.check(noted);
        }
    }

    @Test
    void whatTheStepsMakeIsTheSameInTheFileAndInMemory() {
        BookCheck check = check(Optional.of(before));
        assertThat(check.faults()).isEmpty();
        assertThat(check.schema()).isTrue();
        assertThat(check.integrity()).isTrue();
        assertThat(check.head()).isEqualTo(before);
        assertThat(check.counts())
                .allSatisfy((kind, count) -> assertThat(count)
                        .isEqualTo(
                                kind == RecordKind.STUDY
                                                || kind == RecordKind.SHEET_PHOTO
                                                || kind == RecordKind.SOURCE_MEASUREMENT
                                                || kind == RecordKind.PRODUCTION
                                                || kind == RecordKind.FACTOR_GROUP
                                                || kind == RecordKind.TEST_PLAN
                                                || kind == RecordKind.FACTOR_PROPOSAL
                                                || kind == RecordKind.CHANGE_DECISION
                                                || kind == RecordKind.CARD_STEP
                                                || kind == RecordKind.FIELD_READING
                                        ? 0
                                        : 1));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "DROP TRIGGER trial_is_not_changed | book.schema-missing | trigger trial_is_not_changed",
                "CREATE TRIGGER more AFTER INSERT ON trial BEGIN SELECT 1; END | book.schema-foreign | trigger more",
                "CREATE TRIGGER more BEFORE INSERT ON schema_step BEGIN SELECT 1; END | book.schema-foreign | trigger more",
                "CREATE TABLE more (a TEXT) | book.schema-foreign | table more",
                "CREATE INDEX more ON trial (operator) | book.schema-foreign | index more",
                "DROP INDEX trial_by_determination | book.schema-missing | index trial_by_determination",
                "ALTER TABLE trial ADD COLUMN more TEXT | book.schema-changed | table trial"
            })
    void everyChangeOfTheSchemaIsNamedAndNothingIsKeptOnTopOfIt(String change, String code, String place)
            throws SQLException {
        Books.sql(file, change);
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(Books.codes(book.warnings())).contains(code);
            assertThat(book.warnings()).noneMatch(warning -> warning.isError());
            BookCheck check = book.check(Optional.empty());
            assertThat(check.schema()).isFalse();
            assertThat(check.faults()).anySatisfy(fault -> {
                assertThat(fault.code()).isEqualTo(code);
                assertThat(fault.place()).isEqualTo(place);
            });
            assertThat(Books.codes(
                            book.keep(List.of(Draft.of(Samples.source("S-9", Role.FINE, "L"))), "R. Vale", "entered")))
                    .containsExactly("book.not-sound");
            assertThat(book.latest(Source.class)).hasSize(1);
        }
    }

    /** A view that gives the first version brings back a factor that was withdrawn. */
    @Test
    void aReplacedViewIsFound() throws SQLException {
        Books.sql(
                file,
                "DROP VIEW newest_entry",
                "CREATE VIEW newest_entry AS SELECT entry_no, kind, record_id, version, who, at_utc, why FROM entry"
                        + " WHERE version = 1");
        assertThat(check(Optional.empty()).faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.place()).isEqualTo("view newest_entry"))
                .satisfies(fault -> assertThat(fault.code()).isEqualTo("book.schema-changed"));
    }

    @Test
    void droppedTriggersAreAllNamed() throws SQLException {
        List<String> triggers = strings("SELECT 'trigger ' || name FROM sqlite_master WHERE type = 'trigger'");
        List<String> drops = triggers.stream().map(name -> "DROP " + name).toList();
        Books.sql(file, drops.toArray(String[]::new));
        assertThat(check(Optional.empty()).faults())
                .extracting(BookCheck.Fault::place)
                .containsExactlyInAnyOrderElementsOf(triggers)
                .hasSize(132);
    }

    @Test
    void theLastTwelveEntriesCutOffShowBesideANoteOnly() throws SQLException {
        Head noted;
        try (LabBook book = Books.SHELF.open(file)) {
            Books.keep(
                    book,
                    IntStream.rangeClosed(1, 12)
                            .mapToObj(number -> (Kept) Samples.trial("T-" + number, "M-2", "D-1", "5.4"))
                            .toList());
            noted = book.head();
        }
        assertThat(noted.entries()).isEqualTo(23);
        withoutTriggers("DELETE FROM trial WHERE entry_no > 11", "DELETE FROM entry WHERE entry_no > 11");
        BookCheck alone = check(Optional.empty());
        assertThat(alone.problems()).isEmpty();
        assertThat(alone.head()).isEqualTo(before);
        BookCheck beside = check(Optional.of(noted));
        assertThat(beside.isIntact()).isFalse();
        assertThat(beside.faults()).extracting(BookCheck.Fault::code).containsExactly("book.head-cut");
        assertThat(beside.faults().get(0).entry()).isEqualTo(23);
        assertThat(beside.faults().get(0).problem().values()).containsExactly(23L, noted.printed(), 11L);
        assertThat(beside.counts()).containsEntry(RecordKind.TRIAL, 1);
    }

    @Test
    void aChainWrittenAnewShowsBesideANoteOnly() throws SQLException {
        List<Entry> entries;
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Session session = new Session(connection)) {
            entries = session.read(handle -> new EntryTable(handle).newest(Integer.MAX_VALUE));
        }
        List<String> rewriting = new ArrayList<>();
        ChainEnd end = ChainEnd.OF_NONE;
        for (Entry entry : entries) {
            String who = entry.number() == 4 ? "Somebody else" : entry.who();
            Entry last = end.next(
                    entry.kind(),
                    entry.recordId(),
                    entry.version(),
                    new Stamp(who, Instant.parse(entry.atUtc()), entry.why()),
                    entry.contentHash());
            end = last.end();
            rewriting.add("UPDATE entry SET who = '" + who + "', previous_hash = '" + last.previousHash()
                    + "', hash = '" + last.hash() + "' WHERE entry_no = " + last.number());
        }
        withoutTriggers(rewriting.toArray(String[]::new));
        assertThat(check(Optional.empty()).faults()).isEmpty();
        assertThat(check(Optional.of(before)).faults())
                .extracting(BookCheck.Fault::code)
                .containsExactly("book.head-differs");
    }

    @Test
    void anEarlierNoteStillHoldsWhenTheBookGrew() {
        try (LabBook book = Books.SHELF.open(file)) {
            Books.keep(book, Samples.source("S-9", Role.FINE, "Ledge"));
            assertThat(book.check(Optional.of(before)).isIntact()).isTrue();
            assertThat(book.check(Optional.of(Head.EMPTY)).isIntact()).isTrue();
            assertThat(book.check(Optional.of(new Head("0123456789abcdef", 3))).isIntact())
                    .isFalse();
        }
    }

    @Test
    void nothingIsReplacedByAnyTable() throws SQLException {
        try (LabBook book = Books.SHELF.open(file)) {
            Books.keep(book, SampleStudies.operators("O-1"));
            Books.keep(
                    book, SamplePhotos.photo("P-1", book.ids(RecordKind.TRIAL).get(0), SamplePhotos.png(99, 1)));
            Books.keep(book, SampleSources.measurement("S-1/m1", "S-1", LocalDate.of(2026, 3, 2), "2.65"));
            Books.keep(
                    book,
                    SampleProduction.days(
                            "p1",
                            book.ids(RecordKind.MIX).get(0),
                            LocalDate.of(2026, 3, 2),
                            LocalDate.of(2026, 3, 8),
                            5));
            Books.keep(book, SampleGroups.group("G-1", "M-2"));
            Books.keep(
                    book, SamplePlans.plan(LocalDate.of(2026, 3, 2), SamplePlans.row("M-1", LocalDate.of(2026, 3, 2))));
            Books.keep(book, SampleProposals.full("M-1", "M-1/1"));
            Books.keep(book, SampleDecisions.keep("M-1/c1", "M-1"));
            Books.keep(book, SampleCards.handedOut("M-1", 1, "12"));
            Books.keep(book, SampleReadings.plain("f1", "M-1", "5.5"));
        }
        List<String> tables = strings(Books.TABLES_OF_THE_HISTORY);
        assertThat(tables).hasSize(44);
        for (String table : tables) {
            for (String insert : List.of("REPLACE INTO ", "INSERT OR REPLACE INTO ", "INSERT OR IGNORE INTO ")) {
                assertThatExceptionOfType(SQLException.class)
                        .as(insert + table)
                        .isThrownBy(() -> Books.sql(file, insert + table + " SELECT * FROM " + table))
                        .withMessageContaining("never replaced");
            }
        }
        assertThatExceptionOfType(SQLException.class)
                .isThrownBy(() -> Books.sql(
                        file,
                        "REPLACE INTO entry SELECT 13, kind, record_id, version, 'X', at_utc, why, content_hash,"
                                + " previous_hash, hash FROM entry WHERE entry_no = 4"))
                .withMessageContaining("never replaced");
        assertThat(check(Optional.of(before)).faults()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "UPDATE factor_issue SET factor_pct = CAST('-0.10' AS BLOB)",
                "UPDATE entry SET version = 'two'",
                "UPDATE meter SET in_service = 2",
                "UPDATE entry SET who = ''",
                "UPDATE entry SET hash = 'f'",
                "UPDATE trial SET fine_mass = '1', fine_mass_unit = NULL",
                "UPDATE equipment SET due_on = NULL",
                "UPDATE equipment SET calibrated_on = NULL",
                "UPDATE equipment SET certificate = NULL",
                "UPDATE equipment SET limit_of_error = NULL"
            })
    void strictTablesRefuseWhatCannotBeMeant(String change) throws SQLException {
        List<String> triggers =
                strings("SELECT name FROM sqlite_master WHERE type = 'trigger' AND name LIKE '%changed'");
        List<String> all = new ArrayList<>(
                triggers.stream().map(name -> "DROP TRIGGER " + name).toList());
        all.add(change);
        assertThatExceptionOfType(SQLException.class)
                .isThrownBy(() -> Books.sql(file, all.toArray(String[]::new)))
                .withMessageContaining("CONSTRAINT");
    }

    @Test
    void everyTableIsStrict() throws SQLException {
        assertThat(strings("SELECT name FROM pragma_table_list WHERE type = 'table' AND strict = 0"
                        + " AND name NOT LIKE 'sqlite%' AND schema = 'main'"))
                .containsExactly("schema_step");
    }

    /** The quick look follows the newest entries row by row; on a newest one that is wrong nothing is put. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "UPDATE equipment SET division = '9' | 11 | true",
                "UPDATE dial_point SET gauge_pct = '9.9' WHERE position = 1 | 10 | false",
                "UPDATE card_print SET destination = 'x' | 9 | false",
                "UPDATE entry SET previous_hash = hash WHERE entry_no = 11 | 11 | true"
            })
    void openingTellsAChangedNewestEntry(String change, long entry, boolean notSound) throws SQLException {
        withoutTriggers(change);
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.warnings()).isNotEmpty().allSatisfy(warning -> {
                assertThat(warning.isError()).isFalse();
                assertThat(warning.values().get(0)).isEqualTo(entry);
            });
            assertThat(book.notWritable().isPresent()).isEqualTo(notSound);
        }
    }
}
