package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Role;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.FactorTerms;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.RecordKind;
import porebench.record.SampleCards;
import porebench.record.SampleEquipment;
import porebench.record.SampleProduction;
import porebench.record.SampleProposals;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.book.BookCheck;
import porebench.record.book.LabBook;
import porebench.record.chain.Head;
import porebench.record.id.MixId;
import porebench.store.file.Header;
import porebench.store.file.Steps;
import porebench.store.file.StoreException;

/** That lab books of earlier steps open, keep every row and their chain, and take what newer steps hold. */
class OlderStepsTest {
    @TempDir
    Path folder;

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

    /** The file was made by the program as it was when the fourth step was the last one. */
    @Test
    void aLabBookOfTheFourthStepKeepsAllItHoldsAndItsChain() throws Exception {
        Path old = folder.resolve("old.porebench");
        try (InputStream stream = SchemaTest.class.getResourceAsStream("books/book-of-step-4.porebench")) {
            Files.copy(Objects.requireNonNull(stream), old);
        }
        assertThat(Header.read(old)).contains(new Header(Header.LAB_BOOK, 4));
        Head then = new Head("11e932275e0d5974", 13);
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.warnings()).isEmpty();
            assertThat(book.head()).isEqualTo(then);
            BookCheck check = book.check(Optional.of(then));
            assertThat(check.faults()).isEmpty();
            assertThat(check.counts())
                    .containsEntry(RecordKind.SOURCE, 2)
                    .containsEntry(RecordKind.METER_CALIBRATION, 1);
            Samples.fullAsBefore().stream()
                    .filter(value -> value.kind() != RecordKind.FACTOR_ISSUE)
                    .filter(value -> value.kind() != RecordKind.DETERMINATION)
                    .forEach(value -> assertThat(
                                    (Object) book.history(value.kind().type(), value.recordId())
                                            .get(0)
                                            .value())
                            .isEqualTo(value));
            assertThat(book.history(Source.class, "S-9"))
                    .extracting(version -> version.value().ledge())
                    .containsExactly("Ledge 1", "Ledge 2");
            assertThat(book.latest(FactorIssue.class)).hasSize(1);
            Books.keep(book, Samples.source("S-8", Role.FINE, "Ledge"));
            assertThat(book.check(Optional.of(then)).faults()).isEmpty();
        }
    }

    private static final SqliteShelf SIXTH = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 6));

    @Test
    void aLabBookOfTheSixthStepKeepsEveryRowAndItsChain() throws SQLException, IOException {
        Path old = folder.resolve("old.porebench");
        Map<String, List<String>> columns = new TreeMap<>();
        Map<String, List<String>> rows = new TreeMap<>();
        Head then;
        try (LabBook book = SIXTH.create(old)) {
            Books.keep(book, Samples.fullOfStep7());
            Books.correct(book, Samples.laboratory());
            then = book.head();
        }
        for (String table : tables(old)) {
            columns.put(table, columns(old, table));
            rows.put(table, rows(old, table, columns.get(table)));
        }
        assertThat(rows)
                .hasSize(20)
                .allSatisfy((table, content) -> assertThat(content).isNotEmpty());
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
        }
        assertThat(Header.read(old)).contains(new Header(Header.LAB_BOOK, Steps.ALL.newest()));
        for (String table : rows.keySet()) {
            assertThat(rows(old, table, columns.get(table))).as(table).isEqualTo(rows.get(table));
            for (String later : columns(old, table)) {
                if (!columns.get(table).contains(later)) {
                    assertThat(strings(old, "SELECT typeof(" + later + ") FROM " + table))
                            .as(table + "." + later)
                            .containsOnly("null");
                }
            }
        }
        assertThat(tables(old)).hasSize(44).containsAll(rows.keySet());
    }

    /** The step only adds a table: what was there keeps its rows, its hashes and its head, and takes equipment from then on. */
    @Test
    void aLabBookOfTheSeventhStepTakesEquipmentFromThenOn() throws SQLException {
        Path old = folder.resolve("old.porebench");
        Head then;
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 7)).create(old)) {
            Books.keep(book, Samples.fullOfStep7());
            then = book.head();
        }
        List<String> hashes = strings(old, "SELECT content_hash || hash FROM entry ORDER BY entry_no");
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.warnings()).isEmpty();
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
            assertThat(book.latest(Equipment.class)).isEmpty();
            Books.keep(book, SampleEquipment.equipment("BAL-1", EquipmentKind.BALANCE, "0.1", "0.2"));
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
        }
        assertThat(strings(old, "SELECT content_hash || hash FROM entry ORDER BY entry_no"))
                .hasSize(11)
                .startsWith(hashes.toArray(String[]::new));
    }

    /** The step only adds a column: a mix that names no plant is hashed as before, and one that does is kept with it. */
    @Test
    void aLabBookOfTheThirteenthStepTakesThePlantOfAMixFromThenOn() throws SQLException {
        Path old = folder.resolve("old.porebench");
        MixDesign mix = Samples.mix("M-9", "S-1", "S-2");
        Head then;
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 13)).create(old)) {
            Books.keep(book, mix);
            then = book.head();
        }
        List<String> hashes = strings(old, "SELECT content_hash || hash FROM entry ORDER BY entry_no");
        MixDesign named = new MixDesign(
                mix.id(),
                mix.title(),
                mix.batch(),
                mix.soakMinutes(),
                mix.airTolerancePercent(),
                mix.profileId(),
                mix.remarks(),
                Optional.of("Quay plant"));
        Path fresh = folder.resolve("fresh.porebench");
        try (LabBook book = Books.SHELF.open(old);
                LabBook other = Books.SHELF.create(fresh)) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
            assertThat(book.latest(MixDesign.class, "M-9").orElseThrow().value().plant())
                    .isEmpty();
            Books.correct(book, named);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
            assertThat(book.latest(MixDesign.class, "M-9").orElseThrow().value())
                    .isEqualTo(named);
            Books.keep(other, mix);
        }
        List<String> now = strings(old, "SELECT content_hash || hash FROM entry ORDER BY entry_no");
        assertThat(now).hasSize(2).startsWith(hashes.toArray(String[]::new));
        assertThat(strings(fresh, "SELECT content_hash || hash FROM entry ORDER BY entry_no"))
                .isEqualTo(hashes);
    }

    /** The step only adds columns: a source that says no more than before is hashed as before, and one that says a step is kept with it. */
    @Test
    void aLabBookOfTheFourteenthStepTakesTheStepsOfSourcesFromThenOn() throws SQLException {
        Path old = folder.resolve("old.porebench");
        Source ledge1 = Samples.source("S-9", Role.COARSE, "Ledge 1");
        Source ledge2 = Samples.source("S-9", Role.COARSE, "Ledge 2");
        Head then;
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 14)).create(old)) {
            Books.keep(book, ledge1);
            Books.correct(book, ledge2);
            then = book.head();
        }
        List<String> hashes = strings(old, "SELECT content_hash || hash FROM entry ORDER BY entry_no");
        Source ledge3 = SampleSources.changed(Samples.source("S-9", Role.COARSE, "Ledge 3"), LocalDate.of(2026, 4, 1));
        Path fresh = folder.resolve("fresh.porebench");
        try (LabBook book = Books.SHELF.open(old);
                LabBook other = Books.SHELF.create(fresh)) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
            Books.correct(book, ledge3);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
            assertThat(book.history(Source.class, "S-9"))
                    .extracting(version -> version.value())
                    .containsExactly(ledge1, ledge2, ledge3);
            Books.keep(other, ledge1);
            Books.correct(other, ledge2);
        }
        List<String> now = strings(old, "SELECT content_hash || hash FROM entry ORDER BY entry_no");
        assertThat(now).hasSize(3).startsWith(hashes.toArray(String[]::new));
        assertThat(strings(fresh, "SELECT content_hash || hash FROM entry ORDER BY entry_no"))
                .isEqualTo(hashes);
        Books.sql(fresh, "DROP TRIGGER source_is_not_changed");
        assertThatThrownBy(() -> Books.sql(fresh, "UPDATE source SET step = 'altered'"))
                .hasMessageContaining("CHECK constraint failed");
    }

    /** What was issued before says no hour and no conditions, and its hash stays; drafts are taken from then on. */
    @Test
    void aLabBookOfTheSixteenthStepKeepsItsFactorsAndTakesDrafts() {
        Path old = folder.resolve("old.porebench");
        FactorIssue first = Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 9));
        Head then;
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 16)).create(old)) {
            Books.keep(book, Samples.mix("M-1", "S-1", "S-2"), first);
            then = book.head();
        }
        FactorIssue second = Samples.issue("M-1", 2, "M-1/1", LocalDate.of(2026, 4, 9))
                .under(new FactorTerms(FactorTerms.time("14:30"), "sand Alder only", "P. Linden"));
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.latest(FactorIssue.class, "M-1/r1").orElseThrow().value())
                    .isEqualTo(first);
            Books.keep(book, second, SampleProposals.full("M-1", "M-1/1"));
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
        }
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.latest(FactorIssue.class, "M-1/r2").orElseThrow().value())
                    .isEqualTo(second);
            assertThat(book.latest(FactorProposal.class, "M-1/p1").orElseThrow().value())
                    .isEqualTo(SampleProposals.full("M-1", "M-1/1"));
            Books.correct(book, SampleProposals.issued("M-1", "M-1/1", 2));
            assertThat(book.history(FactorProposal.class, "M-1/p1")).hasSize(2);
            assertThat(book.verify()).isEmpty();
        }
    }

    /** The step only adds a table: what was there keeps its hashes, and measurements are taken from then on. */
    @Test
    void aLabBookOfTheFifteenthStepTakesMeasurementsFromThenOn() throws SQLException {
        Path old = folder.resolve("old.porebench");
        Head then;
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 15)).create(old)) {
            Books.keep(book, Samples.source("S-9", Role.COARSE, "Ledge 1"));
            then = book.head();
        }
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.latest(SourceMeasurement.class)).isEmpty();
            Books.keep(book, SampleSources.measurement("S-9/m1", "S-9", LocalDate.of(2026, 3, 2), "2.66"));
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
        }
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.latest(SourceMeasurement.class, "S-9/m1")
                            .orElseThrow()
                            .value())
                    .isEqualTo(SampleSources.measurement("S-9/m1", "S-9", LocalDate.of(2026, 3, 2), "2.66"));
        }
    }

    /** The step only adds a table: what was there keeps its hashes, and production is taken from then on. */
    @Test
    void aLabBookOfTheSixteenthStepTakesProductionFromThenOn() throws SQLException {
        Path old = folder.resolve("old.porebench");
        Head then;
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 16)).create(old)) {
            Books.keep(book, Samples.mix("M-1", "S-1", "S-2"));
            then = book.head();
        }
        Production made = SampleProduction.with(
                SampleProduction.days("M-1/p1", "M-1", LocalDate.of(2026, 3, 2), LocalDate.of(2026, 3, 8), 5),
                Optional.of(24),
                Optional.of("180.50"),
                Optional.empty());
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.latest(Production.class)).isEmpty();
            Books.keep(book, made);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
        }
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.latest(Production.class, "M-1/p1").orElseThrow().value())
                    .isEqualTo(made);
        }
    }

    private static List<String> tables(Path book) throws SQLException {
        return strings(book, Books.TABLES_OF_THE_HISTORY);
    }

    private static List<String> columns(Path book, String table) throws SQLException {
        return strings(book, "SELECT name FROM pragma_table_info('" + table + "') ORDER BY name");
    }

    /** Returns a table's rows, each with the name, type and content of some columns. */
    private static List<String> rows(Path book, String table, List<String> columns) throws SQLException {
        List<String> cells = columns.stream()
                .map(name -> "'" + name + " ' || typeof(" + name + ") || quote(" + name + ")")
                .toList();
        return strings(book, "SELECT " + String.join(" || ", cells) + " FROM " + table + " ORDER BY rowid");
    }

    /** A row that a strict table refuses comes to light half-way: the lab book is then still the older one, whole. */
    @Test
    void aStepThatFailsHalfWayIsTakenBack() throws SQLException, IOException {
        Path old = folder.resolve("old.porebench");
        try (LabBook book = SIXTH.create(old)) {
            Books.keep(book, Samples.fullOfStep7());
        }
        Books.sql(
                old,
                "DROP TRIGGER factor_issue_is_not_changed",
                "UPDATE factor_issue SET factor_pct = CAST('-0.10' AS BLOB)");
        List<String> schema = strings(old, "SELECT name || sql FROM sqlite_master WHERE sql IS NOT NULL");
        assertThatExceptionOfType(StoreException.class)
                .isThrownBy(() -> Books.SHELF.open(old))
                .withMessageContaining("old.porebench could not be brought up to date.")
                .withMessageContaining("old.porebench.before-step-7");
        assertThat(Header.read(old)).contains(new Header(Header.LAB_BOOK, 6));
        assertThat(strings(old, "SELECT name || sql FROM sqlite_master WHERE sql IS NOT NULL"))
                .isEqualTo(schema);
        assertThat(strings(old, "SELECT count(*) FROM entry")).containsExactly("10");
        try (LabBook book = SIXTH.open(old)) {
            assertThat(Books.codes(book.verify())).contains("book.chain-broken");
        }
    }

    /** The step adds a table, and a column that says nothing of the cards that were there. */
    @Test
    void aLabBookOfTheTwentyFirstStepTakesStepsOfCardsFromThenOn() throws SQLException {
        Path old = folder.resolve("old.porebench");
        CardPrint print = new CardPrint(new MixId("M-1"), 1, 1, "a6", CardPrint.PRINTER);
        Head then;
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 21)).create(old)) {
            Books.keep(book, print);
            then = book.head();
        }
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.latest(CardPrint.class, "M-1/r1/1").orElseThrow().value())
                    .isEqualTo(print);
            Books.keep(book, SampleCards.printed("M-1", 2), SampleCards.handedOut("M-1", 1, "12"));
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
        }
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.latest(CardStep.class, "M-1/r1/1/s1").orElseThrow().value())
                    .isEqualTo(SampleCards.handedOut("M-1", 1, "12"));
            assertThat(book.latest(CardPrint.class, "M-1/r1/2").orElseThrow().value())
                    .isEqualTo(SampleCards.printed("M-1", 2));
        }
        assertThatThrownBy(() -> Books.sql(old, "UPDATE card_step SET holder = 'x'"))
                .hasMessageContaining("never changed");
        assertThatThrownBy(() -> Books.sql(old, "DELETE FROM card_step")).hasMessageContaining("never removed");
    }
}
