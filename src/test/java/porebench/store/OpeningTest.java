package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.port.OpeningRefused;
import porebench.record.Kept;
import porebench.record.MeterCalibration;
import porebench.record.RecordKind;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.store.file.Header;
import porebench.store.file.Steps;
import porebench.store.file.StoreException;

/** The ways opening can go, and that what is refused is left as it was, byte by byte. */
class OpeningTest {
    private static final String SHARED = "classpath:porebench/store/steps/shared";
    private static final String SQLITE = "classpath:porebench/store/steps/sqlite";
    private static final Source SAND = Samples.source("S-1", Role.FINE, "Ledge 1");
    private static final Source STONE = Samples.source("S-2", Role.COARSE, "Ledge 1");

    /** A shelf of the time when there was but one step. */
    private static final SqliteShelf OLDER = new SqliteShelf(Books.CLOCK, new Steps(List.of(SHARED, SQLITE), 1));

    private static final SqliteShelf LATER = new SqliteShelf(
            Books.CLOCK, new Steps(List.of(SHARED, SQLITE, "classpath:porebench/store/later-step"), 100));
    private static final SqliteShelf FAILING = new SqliteShelf(
            Books.CLOCK, new Steps(List.of(SHARED, SQLITE, "classpath:porebench/store/failing-step"), 100));

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("book.porebench");
    }

    /** Everything in the folder, by name. */
    private Map<String, String> contents() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(file.getFileName().toString(), HexFormat.of().formatHex(Files.readAllBytes(file)));
            }
        }
        return contents;
    }

    private List<String> names() throws IOException {
        return List.copyOf(contents().keySet());
    }

    private Problem refusal(SqliteShelf shelf) throws IOException {
        Map<String, String> before = contents();
        OpeningRefused refused = catchThrowableOfType(OpeningRefused.class, () -> shelf.open(file()));
        assertThat(refused).isNotNull();
        assertThat(contents()).isEqualTo(before);
        return refused.problem();
    }

    private void bookWith(SqliteShelf shelf, Source... sources) {
        try (LabBook book = shelf.create(file())) {
            Books.keep(book, sources);
        }
    }

    @Test
    void refusesAFileThatIsNotThere() throws IOException {
        Problem problem = refusal(Books.SHELF);
        assertThat(problem.code()).isEqualTo("book.missing");
        assertThat(problem.values()).containsExactly(file().toString());
    }

    @Test
    void refusesAFolder() throws IOException {
        Files.createDirectory(file());
        assertThat(refusal(Books.SHELF).code()).isEqualTo("book.not-a-lab-book");
    }

    @Test
    void refusesTheRootOfTheDisk() {
        Path root = folder.getRoot();
        OpeningRefused refused = catchThrowableOfType(OpeningRefused.class, () -> Books.SHELF.open(root));
        assertThat(refused.problem()).isEqualTo(Problem.error("file", "book.not-a-lab-book", root.toString()));
    }

    @Test
    void refusesAnEmptyFile() throws IOException {
        Files.createFile(file());
        assertThat(refusal(Books.SHELF).code()).isEqualTo("book.not-a-lab-book");
    }

    @Test
    void refusesAFileOfText() throws IOException {
        Files.writeString(file(), "trial_id,mix_id\n".repeat(50), StandardCharsets.UTF_8);
        Problem problem = refusal(Books.SHELF);
        assertThat(problem.code()).isEqualTo("book.not-a-lab-book");
        assertThat(problem.values()).containsExactly("book.porebench");
    }

    @Test
    void refusesAHeaderCutShort() throws IOException {
        bookWith(Books.SHELF);
        byte[] whole = Files.readAllBytes(file());
        Files.write(file(), Arrays.copyOf(whole, 99));
        assertThat(refusal(Books.SHELF).code()).isEqualTo("book.not-a-lab-book");
    }

    @Test
    void refusesTheDatabaseOfAnotherProgram() throws IOException, SQLException {
        Books.sql(file(), "PRAGMA journal_mode = WAL", "PRAGMA user_version = 2", "CREATE TABLE entry (a TEXT)");
        assertThat(refusal(Books.SHELF).code()).isEqualTo("book.not-a-lab-book");
    }

    @Test
    void refusesALabBookOfANewerVersionByName() throws IOException {
        bookWith(LATER, SAND);
        Problem problem = refusal(Books.SHELF);
        assertThat(problem.code()).isEqualTo("book.newer");
        assertThat(problem.values()).containsExactly("book.porebench", 100, Steps.ALL.newest());
    }

    @Test
    void opensALabBookOfThisVersionWithoutACopy() throws IOException {
        bookWith(Books.SHELF, SAND);
        try (LabBook book = Books.SHELF.open(file())) {
            assertThat(book.name()).isEqualTo("book.porebench");
            assertThat(book.latest(Source.class)).hasSize(1);
        }
        assertThat(names()).containsExactly("book.porebench");
    }

    @Test
    void copiesAnOlderLabBookAsideBeforeItsStepsRun() throws IOException {
        bookWith(OLDER, SAND);
        assertThat(Header.read(file())).contains(new Header(Header.LAB_BOOK, 1));
        try (LabBook book = Books.SHELF.open(file())) {
            assertThat(book.latest(Source.class))
                    .extracting(version -> version.value())
                    .containsExactly(SAND);
            assertThat(book.verify()).isEmpty();
            Books.keep(book, STONE);
        }
        assertThat(names()).containsExactly("book.porebench", "book.porebench.before-step-2");
        assertThat(Header.read(file())).contains(new Header(Header.LAB_BOOK, Steps.ALL.newest()));
        Path aside = folder.resolve("book.porebench.before-step-2");
        assertThat(Header.read(aside)).contains(new Header(Header.LAB_BOOK, 1));
        try (LabBook old = OLDER.open(aside)) {
            assertThat(old.latest(Source.class))
                    .extracting(version -> version.value())
                    .containsExactly(SAND);
        }
    }

    @Test
    void theCopyHoldsWhatIsStillInTheWriteAheadLog() throws IOException {
        Path aside = folder.resolve("book.porebench.before-step-2");
        bookWith(OLDER);
        try (LabBook oldWindow = OLDER.open(file())) {
            Books.keep(oldWindow, SAND);
            assertThat(names()).contains("book.porebench-wal");
            try (LabBook book = Books.SHELF.open(file())) {
                assertThat(book.latest(Source.class)).hasSize(1);
            }
            // The old window no longer knows the tables it would write to.
            List<Problem> problems = oldWindow.keep(List.of(Draft.of(STONE)), "R. Vale", "entered");
            assertThat(problems).extracting(Problem::code).containsExactly("book.newer");
            assertThat(oldWindow.changeNumber()).isEqualTo(1);
        }
        try (LabBook old = OLDER.open(aside)) {
            assertThat(old.latest(Source.class)).hasSize(1);
        }
    }

    @Test
    void aLabBookOfTheSecondStepKeepsAllItHoldsAndItsChain() throws IOException {
        SqliteShelf second = new SqliteShelf(Books.CLOCK, new Steps(List.of(SHARED, SQLITE), 2));
        List<Kept> before = Samples.bare().stream()
                .filter(value -> value.kind() != RecordKind.METER_CALIBRATION)
                .filter(value -> value.kind() != RecordKind.EQUIPMENT)
                .toList();
        try (LabBook book = second.create(file())) {
            Books.keep(book, before);
        }
        assertThat(Header.read(file())).contains(new Header(Header.LAB_BOOK, 2));
        try (LabBook book = Books.SHELF.open(file())) {
            assertThat(book.verify()).isEmpty();
            for (Kept value : before) {
                assertThat(book.latest(value.kind().type(), value.recordId()))
                        .map(version -> (Kept) version.value())
                        .contains(value);
            }
            assertThat(book.isTraining()).isFalse();
            assertThat(book.latest(MeterCalibration.class)).isEmpty();
            Books.keep(
                    book,
                    SampleCalibrations.dialCalibration("C-1", "B-1", LocalDate.of(2026, 3, 1), "0.0", "5.0", "10.0"));
            assertThat(book.verify()).isEmpty();
        }
        assertThat(names()).containsExactly("book.porebench", "book.porebench.before-step-3");
        assertThat(Header.read(file())).contains(new Header(Header.LAB_BOOK, Steps.ALL.newest()));
    }

    @Test
    void neverOverwritesAnEarlierCopy() throws IOException {
        bookWith(OLDER, SAND);
        Path first = folder.resolve("book.porebench.before-step-2");
        Files.writeString(first, "the first copy", StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("book.porebench.before-step-2-2"), "another", StandardCharsets.UTF_8);
        Books.SHELF.open(file()).close();
        assertThat(Files.readString(first, StandardCharsets.UTF_8)).isEqualTo("the first copy");
        assertThat(Header.read(folder.resolve("book.porebench.before-step-2-3")))
                .contains(new Header(Header.LAB_BOOK, 1));
    }

    @Test
    void aStepThatAddsAColumnLeavesTheChainWhole() {
        bookWith(Books.SHELF, SAND);
        try (LabBook book = LATER.open(file())) {
            assertThat(book.verify()).isEmpty();
            Books.keep(book, STONE);
            assertThat(book.verify()).isEmpty();
        }
    }

    @Test
    void aStepThatFailsIsTakenBackAndTheCopyStands() throws IOException {
        bookWith(Books.SHELF, SAND);
        assertThatExceptionOfType(StoreException.class)
                .isThrownBy(() -> FAILING.open(file()))
                .withMessageContaining("book.porebench could not be brought up to date")
                .withMessageContaining("book.porebench.before-step-" + (Steps.ALL.newest() + 1))
                .withMessageNotContaining("INSERT")
                .havingCause();
        assertThat(names()).containsExactly("book.porebench", "book.porebench.before-step-" + (Steps.ALL.newest() + 1));
        try (LabBook book = Books.SHELF.open(file())) {
            assertThat(book.latest(Source.class)).hasSize(1);
            assertThat(book.verify()).isEmpty();
        }
    }

    @Test
    void saysThatADamagedLabBookCannotBeOpenedAndLeavesIt() throws IOException {
        bookWith(Books.SHELF, SAND);
        byte[] damaged = Files.readAllBytes(file());
        Arrays.fill(damaged, Header.LENGTH, damaged.length, (byte) 0x5A);
        Files.write(file(), damaged);
        assertThatExceptionOfType(StoreException.class)
                .isThrownBy(() -> Books.SHELF.open(file()))
                .withMessageStartingWith("book.porebench could not be opened as a lab book. Nothing in it was changed.")
                .havingCause();
        assertThat(Files.readAllBytes(file())).isEqualTo(damaged);
    }

    @Test
    void takesUpWhatACrashLeftInTheWriteAheadLog() throws IOException {
        bookWith(Books.SHELF);
        Path crashed = Files.createDirectory(folder.resolve("crashed"));
        try (LabBook book = Books.SHELF.open(file())) {
            Books.keep(book, SAND);
            // What a power cut would leave: the file and its log as they are, nothing closed.
            for (String name : List.of("book.porebench", "book.porebench-wal")) {
                Files.copy(folder.resolve(name), crashed.resolve(name));
            }
        }
        try (LabBook book = Books.SHELF.open(crashed.resolve("book.porebench"))) {
            assertThat(book.latest(Source.class)).hasSize(1);
            assertThat(book.verify()).isEmpty();
        }
    }

    @Test
    void doesNotBeginALabBookInAFileThatIsThere() throws IOException {
        Files.writeString(file(), "something else", StandardCharsets.UTF_8);
        Map<String, String> before = contents();
        OpeningRefused refused = catchThrowableOfType(OpeningRefused.class, () -> Books.SHELF.create(file()));
        assertThat(refused.problem().code()).isEqualTo("book.file-exists");
        assertThat(contents()).isEqualTo(before);
    }

    @Test
    void leavesNothingBehindWhenALabBookCannotBeBegun() throws IOException {
        assertThatExceptionOfType(StoreException.class)
                .isThrownBy(() -> FAILING.create(file()))
                .withMessageStartingWith("book.porebench could not be created.");
        assertThat(names()).isEmpty();
        assertThatExceptionOfType(StoreException.class)
                .isThrownBy(() -> Books.SHELF.create(folder.resolve("nowhere").resolve("book.porebench")))
                .withMessageStartingWith("book.porebench could not be created.");
    }

    @Test
    void aNameMayHoldWhatUrlsAndSettingsAreMadeOf() throws IOException {
        Path odd = folder.resolve("a ?b#c%20d&'e=1.porebench");
        Books.SHELF.create(odd).close();
        try (LabBook book = Books.SHELF.open(odd)) {
            Books.keep(book, SAND);
            book.saveCopy(folder.resolve("copy of ?a#b%20'.porebench"));
        }
        assertThat(names()).containsExactly("a ?b#c%20d&'e=1.porebench", "copy of ?a#b%20'.porebench");
    }
}
