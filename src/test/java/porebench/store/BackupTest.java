package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Answer;
import porebench.method.Role;
import porebench.port.BookCopy;
import porebench.port.OpeningRefused;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.LabBook;
import porebench.store.file.SqliteFile;

/** Backing up, restoring and beginning lab books, also where an old log or another lab book stands in the way. */
class BackupTest {
    @TempDir
    Path folder;

    private Path file;
    private Path backups;

    @BeforeEach
    void begin() {
        file = folder.resolve("book.porebench");
        backups = folder.resolve("backups");
        try (LabBook book = Books.SHELF.create(file)) {
            Books.keep(book, source("S-1"));
        }
    }

    private static Source source(String id) {
        return Samples.source(id, Role.FINE, "Ledge");
    }

    private static List<String> sources(Path file) {
        try (LabBook opened = Books.SHELF.open(file)) {
            assertThat(opened.verify()).isEmpty();
            return opened.latest(Source.class).stream()
                    .map(version -> version.value().recordId())
                    .toList();
        }
    }

    /** What is in the folder; where the log's index lies is nobody's content, and reading makes one. */
    private Map<String, Long> contents() throws IOException {
        Map<String, Long> contents = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path each : files.filter(Files::isRegularFile)
                    .filter(each -> !each.toString().endsWith("-shm"))
                    .toList()) {
                contents.put(each.getFileName().toString(), (long) Arrays.hashCode(Files.readAllBytes(each)));
            }
        }
        return contents;
    }

    private static String refusal(Runnable work) {
        return catchThrowableOfType(OpeningRefused.class, work::run).problem().code();
    }

    /** Leaves a lab book as a crash does, its newest record in the log beside it. */
    private Path crashed() throws IOException {
        Path crashed = folder.resolve("crashed.porebench");
        try (LabBook book = Books.SHELF.open(file)) {
            Books.keep(book, source("S-2"));
            Files.copy(file, crashed);
            Files.copy(SqliteFile.logOf(file), SqliteFile.logOf(crashed));
        }
        return crashed;
    }

    @Test
    void aBackupOfAnOpenLabBookHoldsTheNewestRecords() throws IOException {
        try (LabBook book = Books.SHELF.open(file)) {
            Books.keep(book, source("S-2"));
            BookCopy first = Books.SHELF.backUp(file, backups).value().orElseThrow();
            Books.keep(book, source("S-3"));
            BookCopy second = Books.SHELF.backUp(file, backups).value().orElseThrow();
            assertThat(second.head()).isEqualTo(book.head());
            assertThat(first.file().getFileName()).hasToString("book-2026-03-02-120000.porebench");
            assertThat(second.file().getFileName()).hasToString("book-2026-03-02-120000.porebench-2");
            assertThat(sources(first.file())).containsExactly("S-1", "S-2");
            assertThat(sources(second.file())).containsExactly("S-1", "S-2", "S-3");
        }
        try (Stream<Path> files = Files.list(backups)) {
            assertThat(files).hasSize(2);
        }
    }

    @Test
    void aBackupDoesNotTakeANameBesideWhichALogWasLeft() throws IOException {
        Files.createDirectory(backups);
        Files.writeString(backups.resolve("book-2026-03-02-120000.porebench-wal"), "the newest trials");
        Path backup = Books.SHELF.backUp(file, backups).value().orElseThrow().file();
        assertThat(backup.getFileName()).hasToString("book-2026-03-02-120000.porebench-2");
        assertThat(sources(backup)).containsExactly("S-1");
    }

    @Test
    void restoringOverALabBookWithALogLeftBehindMixesNothing() throws IOException {
        BookCopy backup = Books.SHELF.backUp(file, backups).value().orElseThrow();
        Path crashed = crashed();
        BookCopy restored = Books.SHELF.restore(backup.file(), crashed).value().orElseThrow();
        assertThat(restored.head()).isEqualTo(backup.head());
        assertThat(sources(crashed)).containsExactly("S-1");
        Path aside = restored.movedAside().orElseThrow();
        assertThat(aside.getFileName()).hasToString("crashed.porebench.replaced-2026-03-02-120000");
        assertThat(sources(aside)).containsExactly("S-1", "S-2");
        assertThat(sources(backup.file())).containsExactly("S-1");
    }

    /** What restoring is there for: the file alone copied over, the log of the old state left. */
    @Test
    void aFileCopiedOverALabBookWithItsLogLeftIsNotOpened() throws IOException {
        Path crashed = crashed();
        Path other = folder.resolve("other.porebench");
        try (LabBook book = Books.SHELF.create(other)) {
            Books.keep(book, source("S-7"), source("S-8"), source("S-9"));
        }
        Files.write(crashed, Files.readAllBytes(other));
        Map<String, Long> before = contents();
        assertThat(refusal(() -> Books.SHELF.open(crashed))).isEqualTo("book.foreign-log");
        assertThat(refusal(() -> Books.SHELF.backUp(crashed, backups))).isEqualTo("book.foreign-log");
        assertThat(contents()).isEqualTo(before);
    }

    @Test
    void aLabBookThatIsOpenIsNotReplaced() throws IOException {
        BookCopy backup = Books.SHELF.backUp(file, backups).value().orElseThrow();
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(Books.codes(Books.SHELF.restore(backup.file(), file).problems()))
                    .containsExactly("book.in-use");
            Books.keep(book, source("S-2"));
        }
        Process other = OtherProgram.start(OtherProgram.class, "hold", file.toString());
        try {
            assertThat(other.inputReader().readLine()).isEqualTo("holding 2");
            assertThat(Books.codes(Books.SHELF.restore(backup.file(), file).problems()))
                    .containsExactly("book.in-use");
        } finally {
            other.outputWriter().close();
            assertThat(OtherProgram.said(other)).isEmpty();
        }
        assertThat(sources(file)).containsExactly("S-1", "S-2");
    }

    @Test
    void neitherItselfNorADamagedBackupIsRestored() throws IOException {
        BookCopy backup = Books.SHELF.backUp(file, backups).value().orElseThrow();
        assertThat(Books.codes(Books.SHELF.restore(file, file).problems())).containsExactly("book.same-file");
        byte[] bytes = Files.readAllBytes(backup.file());
        // The second page is that of the steps; any later one will do.
        bytes[4096 * 6] ^= 0x55;
        Files.write(backup.file(), bytes);
        Map<String, Long> before = contents();
        Answer<BookCopy> answer = Books.SHELF.restore(backup.file(), file);
        assertThat(answer.value()).isEmpty();
        assertThat(Books.codes(answer.problems()))
                .startsWith("book.backup-damaged")
                .hasSizeGreaterThan(1);
        assertThat(contents()).isEqualTo(before);
    }

    @Test
    void noLabBookIsPutWhereAnothersLogIsOrBelongs() throws IOException {
        BookCopy backup = Books.SHELF.backUp(file, backups).value().orElseThrow();
        Path crashed = crashed();
        Path log = SqliteFile.logOf(crashed);
        Path notThere = folder.resolve("book.porebench-journal");
        Map<String, Long> before = contents();
        try (LabBook book = Books.SHELF.open(backup.file())) {
            for (Path side : List.of(log, notThere)) {
                assertThat(refusal(() -> Books.SHELF.restore(file, side))).isEqualTo("output.side-file");
                assertThat(refusal(() -> book.saveCopy(side))).isIn("output.side-file", "book.file-exists");
                assertThat(refusal(() -> Books.SHELF.create(side))).isIn("output.side-file", "book.file-exists");
            }
            assertThat(refusal(() -> Books.SHELF.restore(file, folder))).isEqualTo("output.is-folder");
            assertThat(refusal(() -> Books.SHELF.restore(file, Path.of("/dev/null"))))
                    .isEqualTo("output.not-a-file");
        }
        assertThat(contents()).isEqualTo(before);
    }

    @Test
    void aNewLabBookDoesNotTakeUpTheLogOfOneThatIsGone() throws IOException {
        Path crashed = crashed();
        Files.delete(crashed);
        Map<String, Long> before = contents();
        assertThat(refusal(() -> Books.SHELF.create(crashed))).isEqualTo("book.log-left");
        try (LabBook book = Books.SHELF.open(file)) {
            assertThat(refusal(() -> book.saveCopy(crashed))).isEqualTo("book.log-left");
        }
        assertThat(contents()).isEqualTo(before);
    }

    /** The program is stopped while a lab book is filled: there is none of that name, and beginning it again works. */
    @Test
    void aLabBookThatWasBeingBegunWhenTheProgramWasKilledDoesNotRefuseTheRetry() throws IOException {
        Path begun = folder.resolve("begun.porebench");
        OtherProgram.said(OtherProgram.start(OtherProgram.class, "begin", begun.toString()));
        assertThat(contents().keySet()).anyMatch(name -> name.startsWith("begun.porebench.") && name.endsWith(".part"));
        assertThat(begun).doesNotExist();
        Books.SHELF.create(begun).close();
        assertThat(sources(begun)).isEmpty();
    }
}
