package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.CountedTrials;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.RegisterRow;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.record.Determination;
import porebench.record.Kept;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.SampleCalibrations;
import porebench.record.SampleProduction;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.MixSummary;
import porebench.record.book.Progress;
import porebench.record.id.MixId;
import porebench.store.file.Steps;

/** What is kept beside the entries is always what working it out of them gives. */
class SummariesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 10);
    private static final List<LocalDate> DAYS =
            List.of(DAY.minusYears(1), DAY, DAY.plusMonths(11), DAY.plusYears(1), DAY.plusYears(3));
    private static final int EDITION = LaboratoryStanding.EDITION;

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void aLaboratory() {
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
                    Samples.mix("M-2", "S-1", "S-2"),
                    Samples.mix("M-3", "S-1", "S-3"),
                    Samples.determination("M-1/1", "M-1"),
                    Samples.determination("M-2/1", "M-2"),
                    Samples.trial("T-1", "M-1", "M-1/1", "5.4"),
                    Samples.trial("T-2", "M-1", "M-1/1", "5.5"),
                    Samples.trial("T-3", "M-2", "M-2/1", "5.6"),
                    Samples.issue("M-1", 1, "M-1/1", DAY));
        }
    }

    private static List<RegisterRow> workedOut(LabBook book, LocalDate day) {
        return Evidence.ofAll(book).stream()
                .map(evidence -> RegisterRow.of(evidence, day))
                .toList();
    }

    private static void isRight(LabBook book, LaboratoryStanding standing) {
        for (LocalDate day : DAYS) {
            assertThat(standing.rows(day)).isEqualTo(workedOut(book, day));
        }
        List<Evidence> all = Evidence.ofAll(book);
        LaboratoryScatter scatter = LaboratoryScatter.ofCounted(
                all.stream().flatMap(each -> each.counted().stream()).toList());
        assertThat(standing.scatter().sets()).isEqualTo(scatter.sets());
        List<CountedTrials> counted = new ArrayList<>();
        standing.eachCounted(counted::add);
        assertThat(counted)
                .isEqualTo(all.stream().flatMap(each -> each.counted().stream()).toList());
        for (MeterType type : MeterType.values()) {
            for (Evidence evidence : all) {
                evidence.determinations()
                        .forEach(judged -> assertThat(evidence.elsewhere(judged, type, standing.scatter()))
                                .isEqualTo(evidence.elsewhere(judged, type, scatter)));
            }
        }
    }

    @Test
    void theSecondTimeNothingIsWorkedOut() {
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.summaries().upTo(EDITION)).isZero();
            isRight(book, LaboratoryStanding.of(book));
            assertThat(book.summaries().upTo(EDITION)).isEqualTo(book.changeNumber());
            assertThat(book.summaries().registerLines()).containsOnlyKeys(mixes("M-1", "M-2", "M-3"));
            isRight(book, LaboratoryStanding.of(book));
            assertThat(book.check(Optional.empty()).faults()).isEmpty();
        }
    }

    private static Set<MixId> mixes(String... ids) {
        return Set.copyOf(List.of(ids).stream().map(MixId::new).toList());
    }

    /** Every sort of entry, in a random order from a fixed seed; after each the kept, the renewed and the read anew are compared. */
    @Test
    void whateverIsKeptTheSummariesFollow() {
        Random random = new Random(20261128);
        try (LabBook book = Books.SHELF.open(file)) {
            LaboratoryStanding renewed = LaboratoryStanding.of(book);
            for (int i = 0; i < 60; i++) {
                keepSomething(book, random, i);
                renewed = renewed.renewed();
                isRight(book, renewed);
                if (i % 15 == 0) {
                    isRight(book, LaboratoryStanding.of(book));
                    assertThat(book.check(Optional.empty()).faults()).isEmpty();
                }
            }
            assertThat(book.changeNumber()).isGreaterThan(60);
        }
    }

    private static void keepSomething(LabBook book, Random random, int step) {
        String mix = "M-" + (1 + random.nextInt(3));
        String gauge = "5." + random.nextInt(9);
        switch (random.nextInt(10)) {
            case 0 -> Books.keep(book, Samples.trial("N-" + step, mix, mix + "/1", gauge));
            case 1 -> correctTrial(book, random, gauge);
            case 2 -> Books.correct(book, Samples.source("S-" + (1 + random.nextInt(3)), Role.FINE, "Ledge " + step));
            case 3 ->
                Books.keep(book, SampleCalibrations.bowlCalibration("C-" + step, "B-1", DAY.minusMonths(2), "11.207"));
            case 4 ->
                Books.keep(
                        book,
                        SampleCalibrations.note(
                                "C-" + step, "B-1", DAY.minusMonths(1), MeterCalibration.Reason.REPAIR));
            case 5 -> Books.correct(book, Samples.mix(mix, "S-1", "S-" + (2 + random.nextInt(2))));
            case 6 -> Books.keep(book, Samples.issue(mix, nextRevision(book, mix), mix + "/1", DAY.plusDays(step)));
            case 7 -> keepIfNew(book, Samples.determination(mix + "/1", mix));
            case 8 -> Books.keep(book, Samples.mix("M-1" + step, "S-1", "S-2"));
            default ->
                Books.correct(
                        book, book.latest(Meter.class, "B-1").orElseThrow().value());
        }
    }

    private static void keepIfNew(LabBook book, Determination determination) {
        if (book.latest(Determination.class, determination.recordId()).isEmpty()) {
            Books.keep(book, determination);
        }
    }

    private static void correctTrial(LabBook book, Random random, String gauge) {
        List<String> trials = book.ids(RecordKind.TRIAL);
        Trial trial = book.latest(Trial.class, trials.get(random.nextInt(trials.size())))
                .orElseThrow()
                .value();
        Books.correct(
                book,
                Samples.trial(
                        trial.recordId(),
                        trial.mixId().text(),
                        trial.determinationId().text(),
                        gauge));
    }

    private static int nextRevision(LabBook book, String mix) {
        return Evidence.of(book, new MixId(mix)).orElseThrow().issues().size() + 1;
    }

    @Test
    void onlyTheMixesThatSomethingTouchedAreNamed() {
        try (LabBook book = Books.SHELF.open(file)) {
            touches(book, List.of("M-3"), Samples.determination("M-3/1", "M-3"));
            touches(book, List.of("M-3"), Samples.trial("T-9", "M-3", "M-3/1", "5.3"));
            touches(book, List.of("M-2"), Samples.issue("M-2", 1, "M-2/1", DAY));
            touches(book, List.of("M-1", "M-2", "M-3"), Samples.meter("B-1", MeterType.B));
            touches(
                    book,
                    List.of("M-1", "M-2", "M-3"),
                    SampleCalibrations.note("C-1", "B-1", DAY, MeterCalibration.Reason.REPAIR));
            touches(book, List.of(), SampleCalibrations.note("C-2", "B-2", DAY, MeterCalibration.Reason.REPAIR));
            touches(book, List.of("M-3"), Samples.source("S-3", Role.COARSE, "Ledge 2"));
            touches(book, List.of("M-1"), Samples.mix("M-1", "S-1", "S-3"));
            touches(book, List.of("M-3"), SampleProduction.days("p1", "M-3", DAY, DAY, 1));
            // It is moved from mix 3 to mix 2: both stand otherwise now.
            touches(book, List.of("M-2", "M-3"), SampleProduction.days("p1", "M-2", DAY, DAY, 1));
            touches(book, List.of("M-1", "M-3"), SampleSources.measurement("S-3/m1", "S-3", DAY, "2.65"));
            touches(book, List.of(), Samples.laboratory());
            touches(book, List.of(), Samples.source("S-9", Role.COARSE, "Ledge 2"));
            // It is moved from mix 1 to mix 2: both stand otherwise now.
            touches(book, List.of("M-1", "M-2"), Samples.trial("T-1", "M-2", "M-2/1", "5.4"));
        }
    }

    private static <T extends Kept> void touches(LabBook book, List<String> mixes, T value) {
        long before = book.changeNumber();
        if (book.latest(value.kind().type(), value.recordId()).isPresent()) {
            Books.correct(book, value);
        } else {
            Books.keep(book, value);
        }
        assertThat(book.touchedSince(before).mixes())
                .as(value.kind() + " " + value.recordId())
                .isEqualTo(mixes(mixes.toArray(String[]::new)));
        assertThat(book.touchedSince(before).kinds()).containsExactly(value.kind());
    }

    @Test
    void aSourceTouchesAMixThatOnceHadItToo() {
        try (LabBook book = Books.SHELF.open(file)) {
            Books.correct(book, Samples.mix("M-3", "S-1", "S-2"));
            touches(book, List.of("M-3"), Samples.source("S-3", Role.COARSE, "Ledge 2"));
        }
    }

    @Test
    void aProfileTouchesTheMixesThatAreTestedByIt() {
        try (LabBook book = Books.SHELF.open(file)) {
            MixDesign plain = Samples.mix("M-3", "S-1", "S-3");
            Books.correct(
                    book,
                    new MixDesign(
                            plain.id(),
                            plain.title(),
                            plain.batch(),
                            plain.soakMinutes(),
                            plain.airTolerancePercent(),
                            Samples.profile().recordId(),
                            plain.remarks(),
                            Optional.empty()));
            touches(book, List.of("M-3"), Samples.profile());
        }
    }

    @Test
    void aCheckTellsWhatIsKeptOtherwiseThanTheEntriesSay() throws SQLException {
        try (LabBook book = Books.SHELF.open(file)) {
            LaboratoryStanding.of(book);
        }
        Books.sql(file, "UPDATE register_summary SET said = replace(said, 'IN_FORCE', 'LAPSED') WHERE mix_id = 'M-1'");
        Books.sql(file, "UPDATE trials_summary SET said = replace(said, '0.', '1.') WHERE mix_id = 'M-2'");
        Books.sql(file, "DELETE FROM register_summary WHERE mix_id = 'M-3'");
        Books.sql(file, "INSERT INTO trials_summary SELECT 'M-9', said FROM trials_summary WHERE mix_id = 'M-1'");
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.check(Optional.empty()).integrity()).isTrue();
            assertThat(book.check(Optional.empty()).faults())
                    .extracting(fault -> fault.code() + " " + fault.problem().values())
                    .containsExactly(
                            "book.summary-differs [M-1]",
                            "book.summary-differs [M-2]",
                            "book.summary-differs [M-3]",
                            "book.summary-differs [M-9]");
            LaboratoryStanding.anew(book, Progress.UNHEARD);
            isRight(book, LaboratoryStanding.of(book));
            assertThat(book.check(Optional.empty()).faults()).isEmpty();
        }
    }

    @Test
    void anewIsAnewAlsoWhereNothingCanBeWritten() throws SQLException {
        try (LabBook book = Books.SHELF.open(file)) {
            LaboratoryStanding.of(book);
        }
        Books.sql(file, "UPDATE register_summary SET said = replace(said, 'Mix M-1', 'Mix X')");
        SqliteShelf readOnly = new SqliteShelf(Books.CLOCK, Steps.ALL, path -> false);
        try (LabBook book = readOnly.open(file)) {
            assertThat(LaboratoryStanding.of(book).rows(DAY).get(0).title()).isEqualTo("Mix X");
            isRight(book, LaboratoryStanding.anew(book, Progress.UNHEARD));
        }
    }

    @Test
    void summariesThatCannotBeReadStopNoReadingAndACheckTellsThem() throws SQLException {
        try (LabBook book = Books.SHELF.open(file)) {
            LaboratoryStanding.of(book);
        }
        Books.sql(
                file,
                "INSERT INTO trials_summary VALUES (' ', '')",
                "ALTER TABLE register_summary RENAME COLUMN said TO told");
        try (LabBook book = Books.SHELF.open(file)) {
            isRight(book, LaboratoryStanding.of(book));
            assertThat(Books.codes(book.verify())).containsExactly("book.schema-changed");
        }
    }

    @Test
    void whatIsKeptAndCannotBeReadIsWorkedOut() throws SQLException {
        try (LabBook book = Books.SHELF.open(file)) {
            LaboratoryStanding.of(book);
        }
        Books.sql(file, "UPDATE register_summary SET said = 'nonsense'", "UPDATE trials_summary SET said = 'nonsense'");
        try (LabBook book = Books.SHELF.open(file)) {
            isRight(book, LaboratoryStanding.of(book));
        }
    }

    @Test
    void summariesOfAnotherEditionOrOfEntriesThatAreGoneCountAsNone() throws SQLException {
        try (LabBook book = Books.SHELF.open(file)) {
            LaboratoryStanding.of(book);
            assertThat(book.summaries().upTo(EDITION + 1)).isZero();
        }
        Books.sql(file, "UPDATE summary_state SET up_to = up_to + 1");
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.summaries().upTo(EDITION)).isZero();
            isRight(book, LaboratoryStanding.of(book));
        }
    }

    @Test
    void whoComesSecondDoesNotOverwriteWhatIsNewer() {
        try (LabBook one = Books.SHELF.open(file);
                LabBook other = Books.SHELF.open(file)) {
            long before = one.summaries().upTo(EDITION);
            long then = one.changeNumber();
            Books.keep(other, Samples.trial("T-8", "M-1", "M-1/1", "5.9"));
            LaboratoryStanding.of(other);
            List<MixSummary> old = List.of(new MixSummary(new MixId("M-1"), "old", "old"));
            assertThat(one.summaries().renew(EDITION, before, then, old)).isFalse();
            isRight(one, LaboratoryStanding.of(one));
        }
    }

    @Test
    void aBookThatCanOnlyBeReadIsWorkedOutEachTime() {
        SqliteShelf readOnly = new SqliteShelf(Books.CLOCK, Steps.ALL, path -> false);
        try (LabBook book = readOnly.open(file)) {
            assertThat(book.notWritable()).isPresent();
            isRight(book, LaboratoryStanding.of(book));
            book.summaries().forget();
            assertThat(book.summaries().upTo(EDITION)).isZero();
        }
    }

    @Test
    void aNameIsHeldAgainstThoseThatLookAlike() throws SQLException {
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.alike(RecordKind.MIX, List.of("m-1")).values()).containsExactly("M-1");
            assertThat(book.alike(RecordKind.MIX, List.of("M-1")).values()).containsExactly("M-1");
            assertThat(book.alike(RecordKind.MIX, List.of("M-7"))).isEmpty();
            assertThat(book.alike(RecordKind.SOURCE, List.of("M-1"))).isEmpty();
            Books.keep(book, Samples.mix("M-7", "S-1", "S-2"));
            assertThat(book.alike(RecordKind.MIX, List.of("m-7")).values()).containsExactly("M-7");
            assertThat(refusals(book, Samples.mix("\uFF2D-7", "S-1", "S-2"))).containsExactly("id.looks-the-same");
        }
        Books.sql(file, "DELETE FROM name_look WHERE record_id = 'M-7'");
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(Books.codes(book.verify())).containsExactly("book.looks-differ");
            assertThat(book.check(Optional.empty()).integrity()).isFalse();
            book.summaries().forget();
            assertThat(book.verify()).isEmpty();
        }
        Books.sql(file, "DELETE FROM name_look", "DELETE FROM name_look_state");
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(book.verify()).isEmpty();
            assertThat(book.alike(RecordKind.MIX, List.of("m-7")).values()).containsExactly("M-7");
            Books.keep(book, Samples.source("S-8", Role.FINE, ""));
            assertThat(book.alike(RecordKind.MIX, List.of("m-7")).values()).containsExactly("M-7");
            assertThat(book.verify()).isEmpty();
        }
        Books.sql(file, "UPDATE name_look SET look = 'x' WHERE record_id = 'M-7'");
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(Books.codes(book.verify())).containsExactly("book.looks-differ");
        }
    }

    private static List<String> refusals(LabBook book, Kept value) {
        return Books.codes(book.keep(List.of(Draft.of(value)), "R. Vale", "entered"));
    }
}
