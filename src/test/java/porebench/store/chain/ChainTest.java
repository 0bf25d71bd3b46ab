package porebench.store.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Meter;
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
import porebench.record.book.LabBook;
import porebench.record.chain.Head;
import porebench.store.Books;
import porebench.store.file.StoreException;
import porebench.store.rows.PhotoTable;
import porebench.store.rows.StoredRecord;
import porebench.store.rows.StoredRow;

/** That nothing kept can be changed unnoticed by another program. */
class ChainTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void begin() {
        file = folder.resolve("book.porebench");
        try (LabBook book = Books.fresh(file)) {
            Books.keep(book, Samples.full());
        }
    }

    private List<String> strings(String query) throws SQLException {
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

    private List<String> tables() throws SQLException {
        return strings(Books.TABLES_OF_THE_HISTORY);
    }

    /** Changes the file as somebody would who takes the triggers away and puts them back. */
    private void tamper(String... statements) throws SQLException {
        List<String> triggers = strings("SELECT sql FROM sqlite_master WHERE type = 'trigger'");
        List<String> all = new ArrayList<>(List.of("PRAGMA foreign_keys = OFF"));
        for (String name : strings("SELECT name FROM sqlite_master WHERE type = 'trigger'")) {
            all.add("DROP TRIGGER " + name);
        }
        all.addAll(List.of(statements));
        all.addAll(triggers);
        Books.sql(file, all.toArray(String[]::new));
    }

    private List<Problem> verified() {
        try (LabBook book = Books.SHELF.open(file)) {
            return book.verify();
        }
    }

    @Test
    void everyTableRefusesToBeChangedOrToLoseRows() throws SQLException {
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
        assertThat(tables()).hasSize(44);
        for (String table : tables()) {
            assertThat(strings("SELECT count(*) FROM " + table)).isNotEqualTo(List.of("0"));
            assertThatExceptionOfType(SQLException.class)
                    .as(table)
                    .isThrownBy(() -> Books.sql(file, "UPDATE " + table + " SET " + key(table) + " = " + key(table)))
                    .withMessageContaining("never changed");
            assertThatExceptionOfType(SQLException.class)
                    .as(table)
                    .isThrownBy(() -> Books.sql(file, "DELETE FROM " + table))
                    .withMessageContaining("never removed");
        }
        assertThat(verified()).isEmpty();
    }

    /** The bytes of photos belong to no entry of their own. */
    private static String key(String table) {
        return table.equals(PhotoTable.TABLE) ? "sha256" : "entry_no";
    }

    @ParameterizedTest
    @CsvSource({
        "UPDATE source SET relative_density = '2.65', 3, source",
        "UPDATE meter SET bowl_volume = '0.249', 4, meter",
        "UPDATE meter SET in_service = 1, 4, meter",
        "UPDATE mix SET soak_minutes = NULL, 5, mix",
        "UPDATE mix_constituent SET position = 9 WHERE position = 4, 5, mix",
        "DELETE FROM mix_constituent WHERE position = 4, 5, mix",
        "UPDATE profile_figure SET clause = 'x' WHERE figure = 'factor-step', 2, profile",
        "UPDATE trial SET struck_because = NULL, 7, trial",
        "UPDATE factor_issue_source SET source_version = 4 WHERE source_id = 'S-1', 8, factor_issue",
        "UPDATE factor_issue SET factor_pct = '-0.1', 8, factor_issue",
        "DELETE FROM card_print, 9, card_print",
        "UPDATE factor_issue SET override_by = NULL, 8, factor_issue",
        "UPDATE trial SET simulated = 1, 7, trial",
        "UPDATE laboratory SET training = 1, 1, laboratory",
        "UPDATE meter_calibration SET elevation_m = '0211', 10, meter_calibration",
        "UPDATE bowl_fill SET full_mass = '11.208' WHERE position = 1, 10, meter_calibration",
        "UPDATE dial_point SET position = 9 WHERE position = 2, 10, meter_calibration",
        "DELETE FROM dial_point WHERE position = 5, 10, meter_calibration",
        "UPDATE equipment SET limit_of_error = '2', 11, equipment",
        "UPDATE equipment SET used_until = NULL, 11, equipment",
        "UPDATE entry SET who = 'Somebody' WHERE entry_no = 4, 4, meter",
        "UPDATE entry SET why = why || ' ' WHERE entry_no = 4, 4, meter",
        "UPDATE entry SET at_utc = '2026-03-02T12:00:00.124Z' WHERE entry_no = 4, 4, meter",
        "UPDATE entry SET version = 2 WHERE entry_no = 4, 4, meter",
        "UPDATE entry SET kind = 'nothing' WHERE entry_no = 4, 4, nothing",
        "UPDATE entry SET content_hash = hash WHERE entry_no = 4, 4, meter",
    })
    void findsWhatWasChanged(String change, long entryNo, String kind) throws SQLException {
        tamper(change);
        List<Problem> problems = verified();
        assertThat(Books.codes(problems)).containsExactly("book.chain-broken");
        assertThat(problems.get(0).values().get(0)).isEqualTo(entryNo);
        assertThat(problems.get(0).values().get(1)).hasToString(kind);
    }

    @Test
    void findsAHashPutRightByHandInTheEntryAfterIt() throws SQLException {
        tamper("UPDATE entry SET hash = 'f' || substr(hash, 2), who = 'X' WHERE entry_no = 4");
        assertThat(verified())
                .extracting(Problem::code, problem -> problem.values().get(0))
                .containsExactly(tuple("book.chain-broken", 4L), tuple("book.chain-gap", 5L));
    }

    @Test
    void findsAnEntryTakenOutWithItsRows() throws SQLException {
        tamper("DELETE FROM meter", "DELETE FROM entry WHERE entry_no = 4");
        assertThat(verified()).containsExactly(Problem.error("entry", "book.chain-gap", 5L));
    }

    @Test
    void findsTheFirstEntryTakenOut() throws SQLException {
        tamper("DELETE FROM laboratory", "DELETE FROM entry WHERE entry_no = 1");
        assertThat(verified()).containsExactly(Problem.error("entry", "book.chain-gap", 2L));
    }

    @Test
    void findsRowsLeftBehindByTheLastEntry() throws SQLException {
        tamper("DELETE FROM entry WHERE entry_no = 11");
        assertThat(verified()).containsExactly(Problem.error("entry", "book.chain-gap", 11L));
    }

    @Test
    void findsAPartOfNothing() throws SQLException {
        tamper("INSERT INTO factor_issue_source VALUES (77, 'S-1', 1)");
        assertThat(verified()).containsExactly(Problem.error("entry", "book.chain-gap", 77L));
    }

    @Test
    void saysWhichEntryCannotBeRead() throws SQLException {
        tamper("UPDATE meter SET bowl_volume = 'seven'");
        try (LabBook book = Books.SHELF.open(file)) {
            assertThatExceptionOfType(StoreException.class)
                    .isThrownBy(() -> book.latest(Meter.class))
                    .withMessageStartingWith("Entry 4 of book.porebench cannot be read as a record");
            assertThat(book.changeNumber()).isEqualTo(11);
            Books.keep(book, Samples.source("S-9", Role.FINE, "Ledge"));
        }
    }

    @Test
    void theCanonicalTextOfARecordIsWhatThePencilSays() {
        StoredRow row = new StoredRow("mix")
                .cell("title", "a:b")
                .cell("mix_id", "M\u00fc")
                .cell("n", 12);
        StoredRow late = new StoredRow("part").cell("p", "2");
        StoredRow early = new StoredRow("part").cell("p", "1");
        // The row in characters: 3:mix 5, 1:3 3, 6:mix_id 8, 2:Mü 4, 1:n 3, 2:12 4, 5:title 7, 3:a:b 5; together 39.
        String main = "3:mix1:36:mix_id2:M\u00fc1:n2:125:title3:a:b";
        assertThat(main).hasSize(39);
        assertThat(Canonical.text(new StoredRecord(row, List.of(late, early))))
                .isEqualTo("39:" + main + "15:4:part1:11:p1:1" + "15:4:part1:11:p1:2");
    }

    /** Source: FIPS 180-4 with the examples published for it, message "abc"; recalled. */
    @Test
    void theHashIsSha256() {
        assertThat(Canonical.hash("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void eachEntryCarriesTheHashOfTheOneBefore() throws SQLException {
        List<String> previous = strings("SELECT previous_hash FROM entry ORDER BY entry_no");
        List<String> hashes = strings("SELECT hash FROM entry ORDER BY entry_no");
        assertThat(previous.get(0)).isEqualTo("0".repeat(64));
        assertThat(previous.subList(1, 11)).isEqualTo(hashes.subList(0, 10));
        String content =
                strings("SELECT content_hash FROM entry WHERE entry_no = 9").get(0);
        String fields = "64:" + hashes.get(7) + "1:9" + "10:card_print" + "9:M-2/r12/3" + "1:1" + "7:R. Vale"
                + "24:2026-03-02T12:00:00.123Z" + "7:entered" + "64:" + content;
        assertThat(hashes.get(8)).isEqualTo(Canonical.hash(fields));
    }

    @Test
    void theHeadIsTheShortHashOfTheNewestEntryAndTheirCount() throws SQLException {
        List<String> hashes = strings("SELECT hash FROM entry ORDER BY entry_no");
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.head()).isEqualTo(new Head(hashes.get(10).substring(0, 16), 11));
            Books.keep(book, Samples.source("S-9", Role.FINE, "Ledge"));
            assertThat(book.head().entries()).isEqualTo(12);
            assertThat(book.head().shortHash()).isNotEqualTo(hashes.get(10).substring(0, 16));
        }
        try (LabBook empty = Books.fresh(folder.resolve("empty.porebench"))) {
            assertThat(empty.head()).isEqualTo(Head.EMPTY);
        }
    }
}
