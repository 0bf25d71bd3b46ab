package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Role;
import porebench.port.OpenBooks;
import porebench.port.OutputFile;
import porebench.record.Kept;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.LabBook;
import porebench.store.file.Header;
import porebench.store.file.Steps;
import porebench.store.file.StoreException;

/** That nothing is acknowledged that nobody would find again, when the file goes or another one comes in its place. */
class IdentityTest {
    private static final Source SAND = Samples.source("S-1", Role.FINE, "Ledge 1");
    private static final Source STONE = Samples.source("S-2", Role.COARSE, "Ledge 1");

    @TempDir
    Path folder;

    private Path file;
    private LabBook book;

    @BeforeEach
    void begin() {
        file = folder.resolve("book.porebench");
        book = Books.SHELF.create(file);
        Books.keep(book, SAND);
    }

    @AfterEach
    void end() {
        book.close();
    }

    private void keepingIsRefused() {
        assertThatExceptionOfType(StoreException.class)
                .isThrownBy(() -> Books.keep(book, STONE))
                .withMessageStartingWith(
                        "book.porebench was removed, moved or replaced by another file while it was open here,"
                                + " so this was not saved");
    }

    private static List<String> sources(Path file) {
        try (LabBook opened = Books.SHELF.open(file)) {
            assertThat(opened.verify()).isEmpty();
            return opened.latest(Source.class).stream()
                    .map(version -> version.value().recordId())
                    .toList();
        }
    }

    @Test
    void nothingIsKeptInAFileThatWasRemoved() throws IOException {
        Files.delete(file);
        keepingIsRefused();
        keepingIsRefused();
        assertThat(file).doesNotExist();
    }

    @Test
    void whatWasKeptBeforeIsInTheFileThatWasMoved() throws IOException {
        Path away = folder.resolve("away.porebench");
        Files.move(file, away);
        keepingIsRefused();
        // Without closing: whatever happens to this program now, the acknowledged record is where it is looked for.
        assertThat(sources(away)).containsExactly("S-1");
    }

    @Test
    void whatWasKeptBeforeIsInTheMovedFileWhenItIsClosedWithoutAnotherTry() throws IOException {
        Path away = folder.resolve("away.porebench");
        Files.move(file, away);
        book.close();
        assertThat(sources(away)).containsExactly("S-1");
    }

    @Test
    void theFileThatCameInItsPlaceIsNotTouched() throws IOException {
        Path away = folder.resolve("away.porebench");
        Path other = folder.resolve("other.porebench");
        try (LabBook another = Books.SHELF.create(other)) {
            Books.keep(another, Samples.source("S-9", Role.FINE, "Ledge"));
        }
        Files.move(file, away);
        Files.move(other, file);
        byte[] before = Files.readAllBytes(file);
        keepingIsRefused();
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        book.close();
        assertThat(sources(away)).containsExactly("S-1");
    }

    private static List<Kept> many(String prefix) {
        return IntStream.range(0, 300)
                .mapToObj(number -> (Kept) Samples.source(prefix + number, Role.FINE, "Ledge"))
                .toList();
    }

    /** The log overlays some pages of the other file, and the newest entry is among them: the older ones are another's. */
    @Test
    void aFileWrittenOverInItsPlaceIsNotWrittenTo() throws IOException {
        Path other = folder.resolve("other.porebench");
        try (LabBook another = Books.SHELF.create(other)) {
            Books.keep(another, many("O-"));
        }
        Books.keep(book, many("B-"));
        book.close();
        book = Books.SHELF.open(file);
        Books.keep(book, Samples.source("S-3", Role.FINE, "Ledge"));
        Files.write(file, Files.readAllBytes(other));
        keepingIsRefused();
    }

    @Test
    void aFileWrittenOverByAnOlderCopyIsNotWrittenTo() throws IOException {
        book.close();
        byte[] older = Files.readAllBytes(file);
        book = Books.SHELF.open(file);
        Books.keep(book, many("B-"));
        book.close();
        book = Books.SHELF.open(file);
        Files.write(file, older);
        keepingIsRefused();
    }

    @Test
    void aFileWrittenOverByWhatIsNoLabBookIsNotWrittenTo() throws IOException {
        byte[] text = "trial_id,mix_id\n".repeat(20_000).getBytes(StandardCharsets.UTF_8);
        Files.write(file, text);
        keepingIsRefused();
        assertThat(Files.readAllBytes(file)).startsWith(Arrays.copyOf(text, Header.LENGTH));
    }

    @Test
    void aLogThatWasRemovedIsNoticed() throws IOException {
        Files.delete(folder.resolve("book.porebench-wal"));
        keepingIsRefused();
    }

    @Test
    void anotherWindowsRecordsAreNoReasonToRefuse() {
        try (LabBook other = Books.SHELF.open(file)) {
            Books.keep(other, STONE);
        }
        Books.keep(book, Samples.source("S-3", Role.FINE, "Ledge"));
        book.close();
        assertThat(sources(file)).containsExactly("S-1", "S-2", "S-3");
    }

    /**
     * Closing any descriptor of a file drops this process's locks on it; the next program that closes the lab book then takes
     * it for its own, and removes the log under this one's feet.
     */
    @Test
    void lookingAtTheOpenFileGivesNoLockAway() throws IOException {
        Path link = Files.createLink(folder.resolve("also.porebench"), file);
        for (Path name : List.of(file, link)) {
            assertThat(OpenBooks.contains(name)).isTrue();
            assertThat(OutputFile.replacing(name).problems())
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.code()).isEqualTo("output.lab-book"));
        }
        assertThat(new porebench.exchange.CsvSheets().records(file).problems())
                .extracting(problem -> problem.code())
                .containsExactly("csv.lab-book");
        assertThat(Books.SHELF.versionOf(file)).isEqualTo(Steps.ALL.newest());
        assertThat(OtherProgram.said(OtherProgram.start(OtherProgram.class, "touch", file.toString())))
                .containsExactly("touched");
        assertThat(folder.resolve("book.porebench-wal")).exists();
        Books.keep(book, STONE);
        book.close();
        assertThat(OpenBooks.contains(file)).isFalse();
        assertThat(sources(file)).containsExactly("S-1", "S-2");
    }
}
