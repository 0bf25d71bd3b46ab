package porebench.store.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.Query;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.SampleCalibrations;
import porebench.record.SampleCards;
import porebench.record.SampleDecisions;
import porebench.record.SampleGroups;
import porebench.record.SamplePhotos;
import porebench.record.SampleProduction;
import porebench.record.SampleProposals;
import porebench.record.SampleReadings;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.DraftedRecords;
import porebench.record.book.LabBook;
import porebench.record.book.Records;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.Books;
import porebench.store.rows.RecordTable;
import porebench.store.rows.Selection;

/** What a lab book is asked about one mix, meter or source: it answers with just that, and reads no more. */
class QuestionsTest {
    private static final List<String> OWNERS =
            List.of("M-1", "M-2", "M-1/1", "M-1/2", "M-2/1", "B-1", "B-2", "S-1", "S-2", "S-3", "nobody's");

    @TempDir
    Path folder;

    private Path file;

    static Stream<Belonging<? extends Kept>> belongings() {
        return Stream.of(
                Belonging.DETERMINATIONS_OF_MIX,
                Belonging.DETERMINATIONS_OF_SOURCE,
                Belonging.TRIALS_OF_MIX,
                Belonging.TRIALS_OF_DETERMINATION,
                Belonging.TRIALS_ON_METER,
                Belonging.ISSUES_OF_MIX,
                Belonging.PRINTS_OF_MIX,
                Belonging.CALIBRATIONS_OF_METER,
                Belonging.MIXES_OF_SOURCE,
                Belonging.PHOTOS_OF_TRIAL,
                Belonging.MEASUREMENTS_OF_SOURCE,
                Belonging.PRODUCTION_OF_MIX,
                Belonging.GROUPS_OF_MIX,
                Belonging.PROPOSALS_OF_MIX,
                Belonging.DECISIONS_OF_MIX,
                Belonging.CARD_STEPS_OF_MIX,
                Belonging.READINGS_OF_MIX);
    }

    @BeforeEach
    void twoMixesOnTwoMeters() {
        file = folder.resolve("book.porebench");
        try (LabBook book = Books.fresh(file)) {
            Books.keep(
                    book,
                    Samples.source("S-1", Role.FINE, "Ledge 1"),
                    Samples.source("S-2", Role.COARSE, "Ledge 1"),
                    Samples.source("S-3", Role.COARSE, "Ledge 1"),
                    Samples.meter("B-1", MeterType.B),
                    Samples.meter("B-2", MeterType.B),
                    Samples.mix("M-1", "S-1", "S-2"),
                    Samples.mix("M-2", "S-1", "S-3"),
                    Samples.determination("M-1/1", "M-1"),
                    Samples.determination("M-1/2", "M-1"),
                    Samples.determination("M-2/1", "M-2"),
                    Samples.trial("T-1", "M-1", "M-1/1", "0.4"),
                    Samples.trial("T-2", "M-1", "M-1/1", "0.5"),
                    Samples.trial("T-10", "M-1", "M-1/2", "0.5"),
                    Samples.trial("T-3", "M-2", "M-2/1", "0.6"),
                    Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 1)),
                    Samples.issue("M-2", 1, "M-2/1", LocalDate.of(2026, 3, 1)),
                    new CardPrint(new MixId("M-1"), 1, 1, "a6", "card.pdf"),
                    new CardPrint(new MixId("M-2"), 1, 1, "a6", "card.pdf"));
            Books.keep(
                    book,
                    SampleCalibrations.columnCalibration("C-1", "B-1", LocalDate.of(2026, 1, 5)),
                    SampleCalibrations.columnCalibration("C-2", "B-2", LocalDate.of(2026, 1, 5)),
                    SampleCalibrations.columnCalibration("C-3", "B-1", LocalDate.of(2026, 2, 5)));
            Books.keep(
                    book,
                    SamplePhotos.photo("T-1/photo-1", "T-1", SamplePhotos.png(99, 1)),
                    SamplePhotos.photo("T-1/photo-2", "T-1", SamplePhotos.png(99, 2)),
                    SamplePhotos.photo("T-2/photo-1", "T-2", SamplePhotos.png(99, 1)));
            Books.keep(
                    book,
                    SampleProposals.full("M-1", "M-1/1"),
                    SampleProposals.full("M-2", "M-2/1"),
                    SampleSources.measurement("S-1/m1", "S-1", LocalDate.of(2026, 3, 2), "2.65"),
                    SampleSources.measurement("S-1/m2", "S-1", LocalDate.of(2026, 3, 3), "2.66"),
                    SampleSources.measurement("S-2/m1", "S-2", LocalDate.of(2026, 3, 2), "2.65"),
                    SampleProduction.days("M-1/p1", "M-1", LocalDate.of(2026, 3, 2), LocalDate.of(2026, 3, 8), 5),
                    SampleProduction.days("M-1/p2", "M-1", LocalDate.of(2026, 3, 9), LocalDate.of(2026, 3, 9), 1),
                    SampleProduction.days("M-2/p1", "M-2", LocalDate.of(2026, 3, 2), LocalDate.of(2026, 3, 8), 5));
            Books.keep(book, SampleGroups.group("G-1", "M-2"), SampleGroups.group("G-2"));
            Books.keep(
                    book,
                    SampleDecisions.keep("M-1/c1", "M-1"),
                    SampleDecisions.keep("M-1/c2", "M-1"),
                    SampleDecisions.keep("M-2/c1", "M-2"));
            Books.keep(
                    book,
                    SampleCards.handedOut("M-1", 1, "12"),
                    SampleCards.handedOut("M-1", 2, "7"),
                    SampleCards.handedOut("M-2", 1, "12"),
                    SampleReadings.plain("f1", "M-1", "5.5"),
                    SampleReadings.plain("f2", "M-1", "5.6"),
                    SampleReadings.plain("f3", "M-2", "5.7"));
            // Corrections that move a record to another owner, there and back.
            Books.correct(book, Samples.trial("T-2", "M-1", "M-1/2", "0.5"));
            Books.correct(book, Samples.trial("T-3", "M-1", "M-1/1", "0.6"));
            Books.correct(book, Samples.trial("T-3", "M-2", "M-2/1", "0.7"));
            Books.correct(book, Samples.mix("M-2", "S-1", "S-2"));
            Books.correct(book, SampleGroups.group("G-1", "M-3"));
        }
    }

    @ParameterizedTest
    @MethodSource("belongings")
    <T extends Kept> void theAnswerIsWhatLookingAtEveryRecordGives(Belonging<T> belonging) {
        try (LabBook book = Books.SHELF.open(file)) {
            List<Version<T>> found = new ArrayList<>();
            for (String owner : owners(book, belonging)) {
                List<Version<T>> answer = book.latestOf(belonging, owner);
                assertThat(answer).isEqualTo(everyRecord(book, belonging, owner));
                found.addAll(answer);
            }
            assertThat(found).containsAll(book.latest(belonging.kind()));
        }
    }

    @Test
    void theMixesOfAMeterAreThoseOfItsTrialsAsTheyStandNow() {
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.mixesOn(new MeterId("B-1"))).containsExactly(new MixId("M-1"), new MixId("M-2"));
            assertThat(book.mixesOn(new MeterId("B-2"))).isEmpty();
        }
    }

    private static <T extends Kept> List<String> owners(Records book, Belonging<T> belonging) {
        return Stream.concat(
                        OWNERS.stream(),
                        book.latest(belonging.kind()).stream()
                                .flatMap(version -> belonging.owners().apply(version.value())))
                .distinct()
                .toList();
    }

    private static <T extends Kept> List<Version<T>> everyRecord(Records book, Belonging<T> belonging, String owner) {
        return book.latest(belonging.kind()).stream()
                .filter(version -> belonging.holds(version.value(), owner))
                .toList();
    }

    @Test
    void aRecordThatMovedAwayBelongsWhereItIsNow() {
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(ids(book.latestOf(Belonging.TRIALS_OF_DETERMINATION, "M-1/1")))
                    .containsExactly("T-1");
            assertThat(ids(book.latestOf(Belonging.TRIALS_OF_DETERMINATION, "M-1/2")))
                    .containsExactly("T-10", "T-2");
            assertThat(ids(book.latestOf(Belonging.TRIALS_OF_MIX, "M-2"))).containsExactly("T-3");
            assertThat(ids(book.latestOf(Belonging.MIXES_OF_SOURCE, "S-3"))).isEmpty();
            assertThat(ids(book.latestOf(Belonging.MIXES_OF_SOURCE, "S-2"))).containsExactly("M-1", "M-2");
            assertThat(book.latestOf(Belonging.ISSUES_OF_MIX, "M-2"))
                    .extracting(version -> version.value().mixId())
                    .containsExactly(new MixId("M-2"));
        }
    }

    @Test
    void oneVersionIsGivenAsItWas() {
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.version(Trial.class, "T-3", 2))
                    .hasValue(book.history(Trial.class, "T-3").get(1));
            assertThat(book.version(Trial.class, "T-3", 4)).isEmpty();
            assertThat(book.version(FactorIssue.class, "T-3", 1)).isEmpty();
        }
    }

    @Test
    void theVersionsOfManyRecordsAreThoseOfEach() {
        try (LabBook book = Books.SHELF.open(file)) {
            Map<String, List<Version<Trial>>> found = book.histories(Trial.class, List.of("T-3", "T-1", "nobody's"));
            assertThat(found).containsOnlyKeys("T-1", "T-3");
            assertThat(found.get("T-3")).hasSize(3).isEqualTo(book.history(Trial.class, "T-3"));
            assertThat(found.get("T-1")).isEqualTo(book.history(Trial.class, "T-1"));
            assertThat(book.histories(Trial.class, List.of())).isEmpty();
            // What is drafted is the last version there, as when it is asked for alone.
            DraftedRecords drafted = new DraftedRecords(
                    book,
                    List.of(Draft.correcting(
                            book.latest(Trial.class, "T-3").orElseThrow(),
                            Samples.trial("T-3", "M-1", "M-1/1", "0.6"))),
                    new Stamp("M. Quist", Books.NOON, "why"));
            assertThat(drafted.histories(Trial.class, List.of("T-3")).get("T-3"))
                    .hasSize(4)
                    .isEqualTo(drafted.history(Trial.class, "T-3"));
        }
    }

    @Test
    void whatIsDraftedIsFoundWithTheRest() {
        try (LabBook book = Books.SHELF.open(file)) {
            List<Draft> drafts = List.of(
                    Draft.of(Samples.trial("T-4", "M-1", "M-1/1", "0.6")),
                    Draft.correcting(
                            book.latest(Trial.class, "T-3").orElseThrow(), Samples.trial("T-3", "M-1", "M-1/1", "0.6")),
                    Draft.correcting(
                            book.latest(MixDesign.class, "M-1").orElseThrow(), Samples.mix("M-1", "S-1", "S-3")));
            Records then = new DraftedRecords(book, drafts, new Stamp("R. Vale", Books.NOON, "if"));
            belongings().forEach(belonging -> theSame(then, belonging));
            assertThat(ids(then.latestOf(Belonging.TRIALS_OF_DETERMINATION, "M-1/1")))
                    .containsExactly("T-1", "T-3", "T-4");
            assertThat(ids(then.latestOf(Belonging.TRIALS_OF_DETERMINATION, "M-2/1")))
                    .isEmpty();
            assertThat(ids(then.latestOf(Belonging.MIXES_OF_SOURCE, "S-2"))).containsExactly("M-2");
        }
    }

    private static <T extends Kept> void theSame(Records book, Belonging<T> belonging) {
        for (String owner : owners(book, belonging)) {
            assertThat(book.latestOf(belonging, owner)).isEqualTo(everyRecord(book, belonging, owner));
        }
    }

    @ParameterizedTest
    @MethodSource("belongings")
    void noTableIsReadFromEndToEnd(Belonging<? extends Kept> belonging) throws SQLException {
        RecordTable<?> table = RecordTable.of(belonging.kind());
        noTableIsRead(table, Selection.belonging(table, belonging.column(), "M-1"));
        noTableIsRead(table, Selection.belonging(table, belonging.column(), List.of("M-1", "M-2")));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void norForOneRecordAndItsVersions(RecordKind kind) throws SQLException {
        RecordTable<?> table = RecordTable.of(kind.type());
        noTableIsRead(table, Selection.newest(kind, "M-1"));
        noTableIsRead(table, Selection.newest(kind, List.of("M-1", "M-2")));
        noTableIsRead(table, Selection.version(kind, "M-1", 1));
        noTableIsRead(table, Selection.versions(kind, "M-1"));
    }

    /** What was kept since is gone through; whatever else stands in the book is looked up. */
    @Test
    void norForTheReadingsOfASpan() throws SQLException {
        RecordTable<FieldReading> table = RecordTable.of(FieldReading.class);
        noTableIsRead(table, Selection.between(table, "read_at", "2026-03-03T00:00", "2026-03-04T00:00"));
        LocalDateTime at = SampleReadings.AT;
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.readingsBetween(at, at.plusMinutes(1)))
                    .extracting(version -> version.value().recordId())
                    .contains("f1", "f2");
            assertThat(book.readingsBetween(at.minusDays(1), at)).isEmpty();
            assertThat(book.readingsBetween(at.plusMinutes(1), at.plusMinutes(30)))
                    .isEmpty();
            Books.correct(book, SampleReadings.plain("f1", "M-1", "5.5").at(at.plusMinutes(20)));
            assertThat(book.readingsBetween(at.plusMinutes(1), at.plusMinutes(30)))
                    .extracting(version -> version.value().recordId())
                    .containsExactly("f1");
            assertThat(book.readingsBetween(at, at.plusMinutes(1)))
                    .extracting(version -> version.value().recordId())
                    .doesNotContain("f1");
        }
    }

    @Test
    void norForWhatWasTouchedSince() throws SQLException {
        Selection since = new Selection("", Map.of("after", 5L));
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Handle handle = Jdbi.open(connection)) {
            List<String> plan = TouchedSince.QUERIES.stream()
                    .flatMap(query -> plan(handle, query, since).stream())
                    .toList();
            assertThat(plan)
                    .contains("SEARCH entry USING INTEGER PRIMARY KEY (rowid>?)")
                    .noneMatch(step -> step.matches("SCAN (?!(since|s|v|touched|w)$).*") || step.endsWith("(kind=?)"));
        }
    }

    @Test
    void norForTheMixesOfAMeter() throws SQLException {
        Selection meter = new Selection("", Map.of("meter", "B-1"));
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Handle handle = Jdbi.open(connection)) {
            assertThat(plan(handle, MixesOnMeter.QUERY, meter))
                    .contains("SEARCH t USING COVERING INDEX trial_by_meter (meter_id=?)")
                    .noneMatch(step -> step.startsWith("SCAN") || step.endsWith("(kind=?)"));
        }
    }

    static Stream<RecordKind> kinds() {
        return Stream.of(RecordKind.values());
    }

    private void noTableIsRead(RecordTable<?> table, Selection selection) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Handle handle = Jdbi.open(connection)) {
            List<String> plan = new ArrayList<>(plan(handle, selection.entriesText(), selection));
            Stream.concat(Stream.of(table.name()), table.partTables().stream())
                    .forEach(name -> plan.addAll(plan(handle, selection.rowsText(name), selection)));
            // A search by the kind alone goes through every record of that kind.
            assertThat(plan).isNotEmpty().noneMatch(step -> step.startsWith("SCAN") || step.endsWith("(kind=?)"));
        }
    }

    private static List<String> plan(Handle handle, String sql, Selection selection) {
        try (Query query = handle.createQuery("EXPLAIN QUERY PLAN " + sql)) {
            return query.bindMap(selection.names())
                    .map((row, context) -> row.getString("detail"))
                    .list();
        }
    }

    private static List<String> ids(List<? extends Version<?>> versions) {
        return versions.stream().map(version -> version.value().recordId()).toList();
    }
}
