package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.event.KeyEvent;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Settings;
import porebench.desk.form.Typing;
import porebench.desk.frame.book.InventedBooks;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoYear;
import porebench.exchange.PracticeLaboratory;
import porebench.port.SerialLines;
import porebench.print.PdfPress;
import porebench.record.book.LabBook;
import porebench.store.OtherProgram;
import porebench.store.SqliteShelf;
import porebench.store.draft.DraftFiles;

/** A program that is killed while somebody types: the next start goes on with what was typed. */
@NeedsDisplay
class KilledProgramWindowTest {
    @TempDir
    private Path folder;

    private String awaitLine(BufferedReader lines, String start) throws Exception {
        StringBuilder all = new StringBuilder();
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            all.append(line).append('\n');
            if (line.startsWith(start)) {
                return line;
            }
        }
        throw new AssertionError("no line begins with " + start + " in\n" + all);
    }

    private boolean isWritten(String typed) throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve("drafts"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".draft")).toList()) {
                if (Files.readString(file).contains(typed)) {
                    return true;
                }
            }
            return false;
        }
    }

    @Test
    void whatWasTypedStandsThereAgainAfterAKill() throws Exception {
        Process program = OtherProgram.start(Program.class, folder.toString());
        try (BufferedReader lines = program.inputReader(StandardCharsets.UTF_8)) {
            assertThat(awaitLine(lines, "begins with")).isEqualTo("begins with <>");
            Keys keys = new Keys();
            for (int digit : new int[] {KeyEvent.VK_4, KeyEvent.VK_8, KeyEvent.VK_6, KeyEvent.VK_8}) {
                keys.strike(digit);
            }
            awaitLine(lines, "typed <4868>");
            assertThat(EventThread.comes(() -> isWritten("4868"))).isTrue();
        } finally {
            program.destroyForcibly();
        }
        assertThat(program.waitFor(30, TimeUnit.SECONDS)).isTrue();

        Process again = OtherProgram.start(Program.class, folder.toString());
        try (BufferedReader lines = again.inputReader(StandardCharsets.UTF_8)) {
            assertThat(awaitLine(lines, "begins with")).isEqualTo("begins with <4868>");
        } finally {
            again.destroyForcibly();
        }
    }

    /** The window on the page of trials; says what stands in the field of the fine aggregate. */
    static final class Program {
        private Program() {}

        public static void main(String[] arguments) {
            try {
                type(Path.of(arguments[0]));
            } catch (Exception | AssertionError failure) {
                failure.printStackTrace();
                System.exit(1);
            }
        }

        private static void type(Path folder) throws Exception {
            Settings settings = Settings.inMemory();
            settings.put("person", "M. Sorrel");
            // A mix whose trials are still wanted.
            settings.put("mix", "HG-108");
            SqliteShelf shelf = new SqliteShelf(DemoDesk.DAY);
            Workbench.start(
                    new Outside(
                            shelf,
                            new CsvSheets(),
                            new PdfPress("Porebench", DemoDesk.DAY, ZoneId.of("UTC")),
                            DemoDesk.DAY,
                            ZoneId.of("UTC"),
                            Locale.ENGLISH,
                            settings,
                            new DraftFiles(folder.resolve("drafts")),
                            new InventedBooks(
                                    folder.resolve("demo.porebench"),
                                    file -> fill(shelf, file),
                                    new PracticeLaboratory()),
                            Optional::empty,
                            SerialLines.none()),
                    Optional.empty());
            EventThread.comes(() -> isThere(JLabel.class, "head.title")
                    && Named.in(frame(), JLabel.class, "head.title").getText().startsWith("HG-108"));
            EventThread.run(
                    () -> Named.in(frame(), AbstractButton.class, "step.trials").doClick(0));
            EventThread.comes(() -> isThere(JTextField.class, "fine"));
            JTextField fine = Named.in(frame(), JTextField.class, "fine");
            EventThread.comes(() -> {
                frame().toFront();
                fine.requestFocus();
                return fine.isFocusOwner();
            });
            System.out.println("begins with <" + EventThread.call(fine::getText) + ">");
            EventQueue.invokeLater(() -> Typing.follow(fine, typed -> System.out.println("typed <" + typed + ">")));
        }

        private static JFrame frame() {
            return Arrays.stream(Frame.getFrames())
                    .filter(JFrame.class::isInstance)
                    .map(JFrame.class::cast)
                    .filter(frame -> "frame".equals(frame.getName()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no window"));
        }

        private static boolean isThere(Class<? extends Component> type, String name) {
            try {
                return Named.in(frame(), type, name).isShowing();
            } catch (AssertionError notYet) {
                return false;
            }
        }

        private static void fill(SqliteShelf shelf, Path file) {
            if (!Files.exists(file)) {
                try (LabBook book = shelf.create(file)) {
                    new DemoYear().fill(book);
                }
            }
        }
    }
}
