package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;
import porebench.record.FactorIssue;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.chain.Head;
import porebench.store.OtherProgram;
import porebench.store.SqliteShelf;

/**
 * Programs that are killed while they import and issue: nothing acknowledged is lost, the lab book stands every check, and the
 * command that was cut off can be given again. A kill shows nothing about a power cut.
 */
class KillTest {
    /** More of them are run by hand: {@code -Dporebench.kills=100}. */
    private static final int KILLS = Integer.getInteger("porebench.kills", 4);

    @TempDir
    Path folder;

    private final List<String> acknowledged = new ArrayList<>();
    private final Random random = new Random(11);
    private Head known = Head.EMPTY;
    private int next = 1;

    @Test
    void nothingAcknowledgedIsLostAndTheRetryMakesNothingTwice() throws IOException, InterruptedException {
        Terminal terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        for (int kill = 0; kill < KILLS; kill++) {
            List<String> done = killed(1 + random.nextInt(6));
            acknowledged.addAll(done);
            String last = done.isEmpty() ? "issue " + (next - 1) : done.get(done.size() - 1);
            next = Integer.parseInt(last.substring(last.indexOf(' ') + 1)) + (last.startsWith("issue") ? 1 : 0);
            look();
            again(terminal, next);
            look();
            next++;
        }
    }

    /** Starts the program, kills it a moment after it has acknowledged some commands, and returns all it acknowledged. */
    private List<String> killed(int after) throws IOException, InterruptedException {
        Process program = OtherProgram.start(BusyProgram.class, folder.toString(), Integer.toString(next));
        List<String> said = new ArrayList<>();
        try (BufferedReader lines = program.inputReader(StandardCharsets.UTF_8)) {
            for (int line = 0; line <= after; line++) {
                said.add(lines.readLine());
            }
            program.waitFor(random.nextInt(40), TimeUnit.MILLISECONDS);
            // Killed by its handle: the process itself would close what it said with it.
            program.toHandle().destroyForcibly();
            lines.lines().forEach(said::add);
        }
        assertThat(said.get(0)).isEqualTo("begins");
        List<String> done = said.subList(1, said.size());
        assertThat(done).allMatch(line -> line.matches("(import|issue) \\d+"));
        return done;
    }

    private void look() {
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            assertThat(book.warnings()).isEmpty();
            assertThat(book.check(Optional.of(known)).problems()).isEmpty();
            known = book.head();
            Stream<String> trials = book.latest(Trial.class).stream()
                    .map(version -> version.value().recordId())
                    .filter(id -> id.startsWith("K-"))
                    .map(id -> "import " + id.substring(2));
            List<String> issues = book.latest(FactorIssue.class).stream()
                    .map(version -> "issue " + version.value().reason().substring(1))
                    .toList();
            assertThat(issues).doesNotHaveDuplicates();
            assertThat(Stream.concat(trials, issues.stream()).toList()).containsAll(acknowledged);
        }
    }

    /** Gives the two commands again, of which the killed program may have carried out none, one or both. */
    private void again(Terminal terminal, int number) {
        assertThat(BusyProgram.importing(folder, terminal, number).status()).isZero();
        acknowledged.add("import " + number);
        Said issued = BusyProgram.issuing(terminal, number);
        if (issued.status() == 0) {
            acknowledged.add("issue " + number);
        } else {
            assertThat(issued.out()).contains("\"issue.");
        }
    }
}
