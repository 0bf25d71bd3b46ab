package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.port.OpeningRefused;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.store.file.StoreException;

class KeepingTest {
    private static final Source SAND = Samples.source("S-1", Role.FINE, "Ledge 1");
    private static final Source SAND_AGAIN = Samples.source("S-1", Role.FINE, "Ledge 2");
    private static final Source STONE = Samples.source("S-2", Role.COARSE, "Ledge 1");

    @TempDir
    Path folder;

    private Path file;
    private LabBook book;

    @BeforeEach
    void begin() {
        file = folder.resolve("book.porebench");
        book = Books.fresh(file);
    }

    @AfterEach
    void close() {
        book.close();
    }

    @Test
    void aNewBookHoldsNothing() {
        for (RecordKind kind : RecordKind.values()) {
            assertThat(book.latest(kind.type())).isEmpty();
            assertThat(book.latest(kind.type(), "any")).isEmpty();
            assertThat(book.history(kind.type(), "any")).isEmpty();
        }
        assertThat(book.changeNumber()).isZero();
        assertThat(book.verify()).isEmpty();
    }

    @Test
    void aCorrectionIsANewVersionAndTheFirstOneStays() {
        Books.keep(book, SAND);
        Version<Source> first = book.latest(Source.class, "S-1").orElseThrow();
        assertThat(book.keep(List.of(Draft.correcting(first, SAND_AGAIN)), "M. Ash", "new ledge"))
                .isEmpty();
        Version<Source> second = new Version<>(SAND_AGAIN, 2, new Stamp("M. Ash", Books.NOON, "new ledge"));
        assertThat(book.history(Source.class, "S-1")).containsExactly(first, second);
        assertThat(first).isEqualTo(new Version<>(SAND, 1, new Stamp("R. Vale", Books.NOON, "entered")));
        assertThat(book.latest(Source.class, "S-1")).contains(second);
        assertThat(book.latest(Source.class)).containsExactly(second);
    }

    @Test
    void onlyTheNewestVersionsPartsBelongToIt() {
        MixDesign two = Samples.mix("M-1", "S-1", "S-2");
        MixDesign one = Samples.mix("M-1", Samples.constituent("Stone", Role.COARSE, "S-2", "1750"));
        Books.keep(book, two, Samples.mix("M-2", "S-1", "S-2"));
        Books.correct(book, one);
        assertThat(book.latest(MixDesign.class).stream().map(Version::value))
                .containsExactly(one, Samples.mix("M-2", "S-1", "S-2"));
        assertThat(book.history(MixDesign.class, "M-1").stream().map(Version::value))
                .containsExactly(two, one);
    }

    @Test
    void theNewestVersionsComeInTheOrderOfTheirIds() {
        List<String> ids = List.of("b", "A", "a", "B", "Z-10", "Z-9", "\u00e9", "\uFF24", "\uD83E\uDEA8");
        Books.keep(
                book,
                ids.stream().map(id -> (Kept) Samples.bareSource(id, Role.FINE)).toList());
        assertThat(book.latest(Source.class).stream()
                        .map(version -> version.value().recordId()))
                .containsExactlyElementsOf(ids.stream().sorted().toList());
    }

    @Test
    void refusesWhatIsAlreadyThereOrNotThereOrChangedMeanwhileAndSaysAllOfIt() {
        Books.keep(book, SAND);
        Books.correct(book, SAND_AGAIN);
        List<Problem> problems = book.keep(
                List.of(Draft.of(Samples.laboratory()), Draft.of(SAND), new Draft(SAND, 1), new Draft(STONE, 1)),
                "M. Ash",
                "too late");
        assertThat(problems)
                .containsExactly(
                        Problem.error("id", "book.already-there", RecordKind.SOURCE.word(), "S-1"),
                        Problem.error("id", "book.not-there", RecordKind.SOURCE.word(), "S-2"));
        assertThat(book.keep(List.of(new Draft(SAND, 1)), "M. Ash", "too late"))
                .containsExactly(Problem.error("id", "book.changed-meanwhile", RecordKind.SOURCE.word(), "S-1", 2, 1));
        assertThat(book.changeNumber()).isEqualTo(2);
        assertThat(book.latest(Laboratory.class)).isEmpty();
    }

    @Test
    void oneBatchMayKeepARecordAndItsCorrection() {
        assertThat(book.keep(List.of(Draft.of(SAND), new Draft(SAND_AGAIN, 1)), "R. Vale", "both"))
                .isEmpty();
        assertThat(book.history(Source.class, "S-1")).hasSize(2);
        assertThat(Books.codes(book.keep(List.of(Draft.of(STONE), Draft.of(STONE)), "R. Vale", "twice")))
                .containsExactly("book.already-there");
    }

    @Test
    void nothingIsKeptWhenTheThirdRecordFails() throws SQLException {
        Books.sql(
                file,
                "CREATE TRIGGER disk_full BEFORE INSERT ON laboratory BEGIN SELECT RAISE(ABORT, 'disk full'); END");
        assertThatExceptionOfType(StoreException.class)
                .isThrownBy(() -> Books.keep(book, SAND, STONE, Samples.laboratory()))
                .withMessage("The records could not be saved in book.porebench. None of them was, and what was "
                        + "there is unchanged.")
                .havingCause()
                .withStackTraceContaining("disk full");
        assertThat(book.changeNumber()).isZero();
        assertThat(book.latest(Source.class)).isEmpty();
        Books.keep(book, SAND);
        Books.sql(file, "DROP TRIGGER disk_full");
        assertThat(book.verify()).isEmpty();
    }

    @Test
    void whoAndWhyMustBeSaid() {
        assertThatIllegalArgumentException().isThrownBy(() -> book.keep(List.of(Draft.of(SAND)), " ", "entered"));
        assertThatIllegalArgumentException().isThrownBy(() -> book.keep(List.of(Draft.of(SAND)), "R. Vale", ""));
        assertThat(book.changeNumber()).isZero();
    }

    @Test
    void keepingNothingChangesNothing() {
        assertThat(book.keep(List.of(), "R. Vale", "nothing")).isEmpty();
        assertThat(book.changeNumber()).isZero();
    }

    @Test
    void twoWindowsSeeEachOthersChangesAndCannotBothWin() {
        try (LabBook other = Books.SHELF.open(file)) {
            Books.keep(book, SAND);
            assertThat(other.changeNumber()).isEqualTo(1);
            Version<Source> seen = other.latest(Source.class, "S-1").orElseThrow();
            Books.correct(other, SAND_AGAIN);
            assertThat(book.changeNumber()).isEqualTo(2);
            assertThat(book.latest(Source.class).get(0).value()).isEqualTo(SAND_AGAIN);
            assertThat(Books.codes(book.keep(List.of(Draft.correcting(seen, STONE)), "R. Vale", "wrong id")))
                    .containsExactly("book.not-there");
            assertThat(Books.codes(book.keep(List.of(Draft.correcting(seen, SAND)), "R. Vale", "stale")))
                    .containsExactly("book.changed-meanwhile");
            assertThat(other.changeNumber()).isEqualTo(2);
            assertThat(other.verify()).isEmpty();
        }
    }

    @Test
    void manyWindowsWritingAtOnceMakeOneChain() throws InterruptedException, ExecutionException {
        int windows = 4;
        int each = 25;
        ExecutorService people = Executors.newFixedThreadPool(windows);
        try {
            List<Future<List<Problem>>> done = people.invokeAll(IntStream.range(0, windows)
                    .mapToObj(window -> (Callable<List<Problem>>) () -> keepSome(window, each))
                    .toList());
            for (Future<List<Problem>> problems : done) {
                assertThat(problems.get()).isEmpty();
            }
        } finally {
            people.shutdown();
        }
        assertThat(book.changeNumber()).isEqualTo((long) windows * each);
        assertThat(book.latest(Source.class)).hasSize(windows * each);
        assertThat(book.verify()).isEmpty();
    }

    private List<Problem> keepSome(int window, int count) {
        List<Problem> problems = new ArrayList<>();
        try (LabBook own = Books.SHELF.open(file)) {
            for (int number = 0; number < count; number++) {
                Source source = Samples.source("S-" + window + "-" + number, Role.FINE, "Ledge");
                problems.addAll(own.keep(List.of(Draft.of(source)), "R. Vale", "entered"));
            }
        }
        return problems;
    }

    @Test
    void closingTwiceDoesNoHarmAndLeavesOnlyTheFile() throws IOException {
        LabBook other = Books.SHELF.open(file);
        Books.keep(book, SAND);
        book.close();
        book.close();
        assertThat(other.latest(Source.class)).hasSize(1);
        other.close();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
        assertThatIllegalStateException().isThrownBy(() -> book.latest(Source.class));
        assertThatIllegalStateException().isThrownBy(book::verify);
    }

    @Test
    void aCopyHoldsEverything() throws IOException {
        Books.keep(book, Samples.full());
        Books.correct(book, Samples.laboratory());
        Path copy = folder.resolve("copy.porebench");
        book.saveCopy(copy);
        try (LabBook copied = Books.SHELF.open(copy)) {
            assertThat(copied.changeNumber()).isEqualTo(12);
            assertThat(copied.verify()).isEmpty();
            for (Kept kept : Samples.full()) {
                assertThat((Object) copied.history(kept.kind().type(), kept.recordId()))
                        .isEqualTo(book.history(kept.kind().type(), kept.recordId()));
            }
            Books.keep(copied, SAND);
            assertThat(book.changeNumber()).isEqualTo(12);
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(path -> path.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "book.porebench", "book.porebench-wal", "book.porebench-shm", "copy.porebench");
        }
    }

    @Test
    void aCopyReplacesNothingAndFailsWhole() throws IOException {
        Path there = folder.resolve("there.porebench");
        Files.writeString(there, "something else", StandardCharsets.UTF_8);
        for (Path taken : List.of(there, file)) {
            byte[] before = Files.readAllBytes(taken);
            OpeningRefused refused = catchThrowableOfType(OpeningRefused.class, () -> book.saveCopy(taken));
            assertThat(refused.problem().code()).isEqualTo("book.file-exists");
            assertThat(Files.readAllBytes(taken)).isEqualTo(before);
        }
        Path nowhere = folder.resolve("nowhere").resolve("copy.porebench");
        assertThatExceptionOfType(StoreException.class)
                .isThrownBy(() -> book.saveCopy(nowhere))
                .withMessageContaining("The lab book itself is unchanged");
    }
}
