package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.method.Problem;

/** The one gate for files: what may be written over, and that nothing is ever half there. */
class OutputFileTest {
    private static final OutputFile.Content NEW = content("new");
    private static final byte[] DATABASE = Arrays.copyOf("SQLite format 3".getBytes(StandardCharsets.US_ASCII), 100);

    @TempDir
    Path folder;

    private static OutputFile.Content content(String text) {
        return file -> file.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private Path there(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static List<String> refused(OutputFile file) {
        List<String> codes = file.problems().stream().map(Problem::code).toList();
        if (!codes.isEmpty()) {
            assertThatThrownBy(() -> file.write(NEW))
                    .isInstanceOfSatisfying(
                            OutputRefused.class,
                            refusal -> assertThat(refusal.problems()).isEqualTo(file.problems()));
        }
        return codes;
    }

    @Test
    void writesANewFileAndNothingBesideIt() throws IOException {
        OutputFile.fresh(folder.resolve("card.pdf")).write(NEW);
        assertThat(folder.resolve("card.pdf")).hasContent("new");
        assertThat(names()).containsExactly("card.pdf");
    }

    @Test
    void replacesAFileOnlyWhenTold() throws IOException {
        Path file = there("card.pdf", "older, and longer than the new one");
        assertThat(refused(OutputFile.fresh(file))).containsExactly("output.there");
        assertThat(file).hasContent("older, and longer than the new one");
        OutputFile.replacing(file).write(NEW);
        assertThat(file).hasContent("new");
        assertThat(names()).containsExactly("card.pdf");
    }

    @Test
    void aFolderADeviceAndAMissingFolderAreRefusedAlsoWhenToldToReplace() {
        assertThat(refused(OutputFile.replacing(folder))).containsExactly("output.is-folder");
        assertThat(refused(OutputFile.replacing(Path.of("/")))).containsExactly("output.is-folder");
        assertThat(refused(OutputFile.replacing(Path.of("/dev/null")))).containsExactly("output.not-a-file");
        assertThat(refused(OutputFile.replacing(Path.of("/dev/full")))).containsExactly("output.not-a-file");
        assertThat(refused(OutputFile.fresh(folder.resolve("no").resolve("card.pdf"))))
                .containsExactly("output.folder-missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"my.porebench", "other.db", "card.pdf"})
    void aDatabaseIsNeverWrittenOverWhateverItsNameAndWhoseverItIs(String name) throws IOException {
        Path book = folder.resolve(name);
        Files.write(book, DATABASE);
        assertThat(refused(OutputFile.replacing(book))).containsExactly("output.lab-book");
        assertThat(refused(OutputFile.fresh(book))).containsExactly("output.lab-book");
        assertThat(book).hasBinaryContent(DATABASE);
        assertThat(new OutputRefused(OutputFile.fresh(book).problems()).isOnlyThere())
                .isFalse();
    }

    @Test
    void anEmptyFileWithALogBesideItIsADatabaseAtWork() throws IOException {
        Path book = there("my.porebench", "");
        assertThat(refused(OutputFile.replacing(book))).isEmpty();
        there("my.porebench-wal", "");
        assertThat(refused(OutputFile.replacing(book))).containsExactly("output.lab-book");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-wal", "-shm", "-journal", "-WAL"})
    void aSideFileOfADatabaseIsNotWrittenWhetherItIsThereOrNot(String side) throws IOException {
        Files.write(folder.resolve("my.porebench"), DATABASE);
        Path file = folder.resolve("my.porebench" + side);
        assertThat(refused(OutputFile.replacing(file))).containsExactly("output.side-file");
        Files.writeString(file, "the newest trials");
        assertThat(refused(OutputFile.replacing(file))).containsExactly("output.side-file");
        Files.delete(folder.resolve("my.porebench"));
        assertThat(refused(OutputFile.replacing(file))).containsExactly("output.side-file");
        assertThat(file).hasContent("the newest trials");
    }

    @ParameterizedTest
    @ValueSource(strings = {"377f0682", "377f0683", "d9d505f920a163d7"})
    void aSideFileIsKnownByItsContentUnderAnyName(String mark) throws IOException {
        Path file = folder.resolve("kept-aside");
        Files.write(file, HexFormat.of().parseHex(mark + "00000000"));
        assertThat(refused(OutputFile.replacing(file))).containsExactly("output.side-file");
    }

    @Test
    void aLinkIsFollowedToWhatItLeadsTo() throws IOException {
        Path book = folder.resolve("my.porebench");
        Files.write(book, DATABASE);
        Path card = there("card.pdf", "older");
        Path toBook = Files.createSymbolicLink(folder.resolve("a.pdf"), book);
        Path toCard = Files.createSymbolicLink(folder.resolve("b.pdf"), Path.of("card.pdf"));
        Path toDevice = Files.createSymbolicLink(folder.resolve("c.pdf"), Path.of("/dev/null"));
        Path toNothing = Files.createSymbolicLink(folder.resolve("d.pdf"), Path.of("gone.pdf"));
        Path toSide = Files.createSymbolicLink(
                folder.resolve("e.pdf"), Files.writeString(folder.resolve("my.porebench-shm"), ""));
        assertThat(refused(OutputFile.replacing(toBook))).containsExactly("output.lab-book");
        assertThat(refused(OutputFile.replacing(toDevice))).containsExactly("output.not-a-file");
        assertThat(refused(OutputFile.replacing(toNothing))).containsExactly("output.link-leads-nowhere");
        assertThat(refused(OutputFile.replacing(toSide))).containsExactly("output.side-file");
        assertThat(refused(OutputFile.fresh(toCard))).containsExactly("output.there");
        OutputFile.replacing(toCard).write(NEW);
        assertThat(card).hasContent("new");
        assertThat(toCard).isSymbolicLink();
        assertThat(book).hasBinaryContent(DATABASE);
    }

    @Test
    void aFullDeviceLeavesWhatWasThereAndNothingBeside() throws IOException {
        Path file = there("card.pdf", "older");
        OutputFile.Content full = stream -> {
            stream.write(new byte[100_000]);
            throw new IOException("No space left on device");
        };
        assertThatThrownBy(() -> OutputFile.replacing(file).write(full)).hasMessage("No space left on device");
        assertThat(file).hasContent("older");
        assertThatThrownBy(() -> OutputFile.fresh(folder.resolve("new.pdf")).write(full))
                .isInstanceOf(IOException.class);
        assertThat(names()).containsExactly("card.pdf");
    }

    @Test
    void whatCameMeanwhileIsNotWrittenOver() throws IOException {
        Path file = folder.resolve("card.pdf");
        try (PreparedFile prepared = OutputFile.fresh(file).prepare(NEW)) {
            assertThat(file).doesNotExist();
            Files.writeString(file, "somebody else's");
            assertThatThrownBy(prepared::release)
                    .isInstanceOfSatisfying(
                            OutputRefused.class,
                            refused -> assertThat(refused.isOnlyThere()).isTrue());
        }
        assertThat(file).hasContent("somebody else's");
        try (PreparedFile prepared = OutputFile.replacing(file).prepare(NEW)) {
            Files.write(file, DATABASE);
            assertThatThrownBy(prepared::release).isInstanceOf(OutputRefused.class);
        }
        assertThat(file).hasBinaryContent(DATABASE);
        assertThat(names()).containsExactly("card.pdf");
    }

    @Test
    void aPreparedFileThatIsNotReleasedIsGone() throws IOException {
        try (PreparedFile prepared =
                OutputFile.fresh(folder.resolve("card.pdf")).prepare(NEW)) {
            assertThat(prepared.path()).isEqualTo(folder.resolve("card.pdf"));
            assertThat(names()).hasSize(1);
        }
        assertThat(names()).isEmpty();
    }

    /** A colleague can read what he could read had an editor written it. */
    @Test
    void hasTheRightsOfAnyNewFile() throws IOException {
        Path plain = there("plain.txt", "plain");
        OutputFile.fresh(folder.resolve("card.pdf")).write(NEW);
        OutputFile.replacing(there("older.pdf", "older")).write(NEW);
        OutputFolder.fresh(folder.resolve("export")).write(Map.of("a.csv", NEW));
        for (String name : List.of("card.pdf", "older.pdf", "export/a.csv")) {
            assertThat(Files.getPosixFilePermissions(folder.resolve(name)))
                    .isEqualTo(Files.getPosixFilePermissions(plain));
        }
    }

    @Test
    void severalFilesComeIntoPlaceTogetherOrNotAtAll() throws IOException {
        Map<String, OutputFile.Content> two = new LinkedHashMap<>();
        two.put("a.csv", NEW);
        two.put("b.csv", stream -> {
            throw new IOException("No space left on device");
        });
        Path made = folder.resolve("deep").resolve("export");
        assertThatThrownBy(() -> OutputFolder.fresh(made).write(two)).hasMessage("No space left on device");
        assertThat(names()).isEmpty();
        two.put("b.csv", content("other"));
        assertThat(OutputFolder.fresh(made).write(two)).containsExactly(made.resolve("a.csv"), made.resolve("b.csv"));
        Files.delete(made.resolve("a.csv"));
        assertThatThrownBy(() -> OutputFolder.fresh(made).write(two)).isInstanceOf(OutputRefused.class);
        assertThat(made.resolve("a.csv")).doesNotExist();
        Files.write(made.resolve("b.csv"), DATABASE);
        assertThatThrownBy(() -> OutputFolder.replacing(made).write(two)).isInstanceOf(OutputRefused.class);
        assertThat(made.resolve("a.csv")).doesNotExist();
    }

    @Test
    void saysWhatToDoInTheReadersLanguage() throws IOException {
        OutputRefused refused =
                new OutputRefused(OutputFile.fresh(there("x.pdf", "")).problems());
        assertThat(refused.say(Locale.ENGLISH))
                .isEqualTo(folder.resolve("x.pdf") + " is there already and was not replaced. Choose another name, "
                        + "or replace it (on the command line with --replace).");
        assertThat(refused.say(new Locale("es"))).contains("ya existe y no se reemplazó");
    }

    /** What is written to the log, for whoever looks after the program. */
    @Test
    void aRefusalThatNobodyCatchesNamesEveryReasonWithItsFile() throws IOException {
        List<Problem> both = Stream.of(there("x.pdf", ""), folder)
                .flatMap(path -> OutputFile.fresh(path).problems().stream())
                .toList();
        assertThat(new OutputRefused(both))
                .hasMessage("output.there [" + folder.resolve("x.pdf") + "]; output.is-folder [" + folder + "]");
    }

    /** A lab book is known as one while it is open here, whatever stands in its file. */
    @Test
    void aLabBookThatIsOpenIsNotWrittenOver() throws IOException {
        Path book = there("my.porebench", "");
        Path real = book.toRealPath();
        OpenBooks.opened(real);
        try {
            assertThat(refused(OutputFile.replacing(book))).containsExactly("output.lab-book");
        } finally {
            OpenBooks.closed(real);
        }
        assertThat(refused(OutputFile.replacing(book))).isEmpty();
    }

    /** The memory of a process is a file on Linux whose first bytes nobody can read. */
    @Test
    void whatCannotBeLookedAtIsNotWrittenOver() {
        assertThat(refused(OutputFile.replacing(Path.of("/proc/self/mem")))).containsExactly("output.unreadable");
    }

    @Test
    void aNameThatIsOnlyTheEndingOfASideFileIsAName() throws IOException {
        OutputFile.fresh(folder.resolve("-wal")).write(NEW);
        assertThat(names()).containsExactly("-wal");
    }
}
