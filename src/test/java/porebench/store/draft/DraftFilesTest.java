package porebench.store.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.store.OtherProgram;

class DraftFilesTest {
    private static final String BOOK = "/books/one.porebench";

    @TempDir
    private Path folder;

    @Test
    void whatWasKeptIsThereForAnotherStartOfTheProgram() {
        try (DraftFiles drafts = new DraftFiles(folder)) {
            drafts.keep(BOOK, "trial/HG-101", Optional.of("gauge=5.4\nremarks=ñandú 0.3 %\n"));
            drafts.keep(BOOK, "trial/HG-102", Optional.of(""));
        }
        assertThat(new DraftFiles(folder).all(BOOK))
                .containsEntry("trial/HG-101", "gauge=5.4\nremarks=ñandú 0.3 %\n")
                .containsEntry("trial/HG-102", "")
                .hasSize(2);
    }

    @Test
    void theLastOfManyTextsStands() {
        DraftFiles drafts = new DraftFiles(folder);
        for (int i = 0; i < 500; i++) {
            drafts.keep(BOOK, "trial/HG-101", Optional.of(Integer.toString(i)));
        }
        drafts.keep(BOOK, "trial/HG-102", Optional.of("gone"));
        drafts.keep(BOOK, "trial/HG-102", Optional.empty());
        assertThat(drafts.all(BOOK)).containsOnlyKeys("trial/HG-101").containsValue("499");
    }

    @Test
    void eachLabBookHasItsOwn() {
        DraftFiles drafts = new DraftFiles(folder);
        drafts.keep(BOOK, "trial/HG-101", Optional.of("one"));
        assertThat(drafts.all("/books/two.porebench")).isEmpty();
    }

    @Test
    void aNameOfSeveralLinesWouldBeTakenApartWrongly() {
        assertThatThrownBy(() -> new DraftFiles(folder).keep(BOOK, "a\nb", Optional.of("x")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatCannotBeReadStaysAndTheOthersAreRead() throws IOException {
        DraftFiles drafts = new DraftFiles(folder);
        drafts.keep(BOOK, "trial/HG-101", Optional.of("one"));
        drafts.close();
        Path own;
        try (Stream<Path> folders = Files.list(folder)) {
            own = folders.findFirst().orElseThrow();
        }
        Path broken = own.resolve("broken.draft");
        Files.write(broken, new byte[] {(byte) 0xff, (byte) 0xfe, '\n'});
        Files.writeString(own.resolve("half.draft.part"), "trial/HG-103\nhalf", StandardCharsets.UTF_8);
        assertThat(drafts.all(BOOK)).containsOnlyKeys("trial/HG-101");
        assertThat(broken).exists();
    }

    @Test
    void whatCannotBeWrittenIsToldOnceUntilSomethingIsWrittenAgain() throws IOException {
        Path taken = folder.resolve("taken");
        Files.writeString(taken, "a file where the folder should be", StandardCharsets.UTF_8);
        DraftFiles drafts = new DraftFiles(taken);
        List<Exception> told = new CopyOnWriteArrayList<>();
        drafts.onFailure(told::add);
        for (String letters : List.of("1", "12", "123")) {
            drafts.keep(BOOK, "trial/HG-101", Optional.of(letters));
            drafts.close();
        }
        assertThat(told).hasSize(1);
        Files.delete(taken);
        drafts.keep(BOOK, "trial/HG-101", Optional.of("1234"));
        assertThat(drafts.all(BOOK)).containsValue("1234");
        assertThat(told).hasSize(1);
    }

    /** Another program keeps drafts and is killed while it does: the last text that it said was written is there. */
    @Test
    void whatWasTypedOutlivesAProgramThatIsKilled() throws Exception {
        Process other = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Typist.class.getName(),
                        folder.toString()))
                .redirectErrorStream(true)
                .start();
        try (var lines = other.inputReader(StandardCharsets.UTF_8)) {
            assertThat(lines.readLine()).isEqualTo("50");
        } finally {
            other.destroyForcibly();
        }
        assertThat(other.waitFor(30, TimeUnit.SECONDS)).isTrue();
        DraftFiles again = new DraftFiles(folder);
        assertThat(Integer.parseInt(again.all(BOOK).get("trial/HG-101"))).isGreaterThanOrEqualTo(50);
        again.close();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.filter(Files::isRegularFile))
                    .as("nothing tells of the killed one")
                    .isEmpty();
        }
    }

    /** Two windows of one person on one lab book: each keeps its own, and what the one leaves behind the next start goes on with. */
    @Test
    void twoProgramsLeaveEachOthersDraftsAlone() throws Exception {
        Process other = OtherProgram.start(Typist.class, folder.toString());
        DraftFiles here = new DraftFiles(folder);
        try (var lines = other.inputReader(StandardCharsets.UTF_8)) {
            assertThat(lines.readLine()).isEqualTo("50");
            assertThat(here.all(BOOK)).isEmpty();
            here.keep(BOOK, "trial/HG-101", Optional.of("here"));
            here.keep(BOOK, "trial/HG-102", Optional.of("here too"));
            assertThat(here.all(BOOK)).hasSize(2).containsEntry("trial/HG-101", "here");
        } finally {
            other.destroyForcibly();
        }
        assertThat(other.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(here.all(BOOK)).containsEntry("trial/HG-101", "here");
        here.keep(BOOK, "trial/HG-101", Optional.empty());
        // What was saved here is gone; what the killed one left is found at the next start.
        here.close();
        DraftFiles next = new DraftFiles(folder);
        assertThat(next.all(BOOK)).containsEntry("trial/HG-102", "here too");
        assertThat(Integer.parseInt(next.all(BOOK).get("trial/HG-101"))).isGreaterThanOrEqualTo(50);
        try (DraftFiles third = new DraftFiles(folder)) {
            assertThat(third.all(BOOK)).isEmpty();
        }
        next.close();
        try (Stream<Path> left = Files.walk(folder)) {
            assertThat(left.filter(Files::isRegularFile)).hasSize(2);
        }
    }

    @Test
    void whatAProgramWasKilledWhileWritingIsTakenAwayAndThatOfALivingOneIsNot() throws IOException {
        DraftFiles gone = new DraftFiles(folder);
        gone.keep(BOOK, "trial/HG-101", Optional.of("one"));
        gone.close();
        Path left = unfinishedBesideTheOnly(".draft");
        DraftFiles living = new DraftFiles(folder);
        assertThat(living.all(BOOK)).containsEntry("trial/HG-101", "one");
        assertThat(left).doesNotExist();
        Path written = unfinishedBesideTheOnly(".draft");
        try (DraftFiles other = new DraftFiles(folder)) {
            assertThat(other.all(BOOK)).isEmpty();
            assertThat(written).exists();
        }
        living.close();
    }

    private Path unfinishedBesideTheOnly(String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            Path only = files.filter(file -> file.toString().endsWith(ending))
                    .findFirst()
                    .orElseThrow();
            return Files.writeString(only.resolveSibling(only.getFileName() + ".part"), "trial");
        }
    }

    @Test
    void aDraftFromTheTimeWhenAllProgramsWroteTheSameFileIsGoneOnWith() throws IOException {
        DraftFiles drafts = new DraftFiles(folder);
        drafts.keep(BOOK, "trial/HG-101", Optional.of("one"));
        drafts.close();
        try (Stream<Path> files = Files.walk(folder)) {
            Path file = files.filter(Files::isRegularFile).findFirst().orElseThrow();
            String name = String.valueOf(file.getFileName());
            Files.move(file, file.resolveSibling(name.substring(0, name.indexOf('.')) + ".draft"));
        }
        assertThat(drafts.all(BOOK)).containsEntry("trial/HG-101", "one");
        drafts.keep(BOOK, "trial/HG-101", Optional.empty());
        assertThat(drafts.all(BOOK)).isEmpty();
    }

    /** Types on and on until it is killed. */
    static final class Typist {
        private Typist() {}

        public static void main(String[] arguments) {
            DraftFiles drafts = new DraftFiles(Path.of(arguments[0]));
            for (int i = 0; ; i++) {
                drafts.keep(BOOK, "trial/HG-101", Optional.of(Integer.toString(i)));
                if (i == 50) {
                    // Only what is written is among them.
                    drafts.all(BOOK);
                    System.out.println(i);
                }
            }
        }
    }
}
