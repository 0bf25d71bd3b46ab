package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.Asker;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Settings;
import porebench.desk.access.OpenedDialog;
import porebench.desk.form.TwoVersions;
import porebench.desk.frame.dialog.SwingAsker;
import porebench.method.Problem;
import porebench.record.book.Stamp;
import porebench.record.id.MixId;

/** Everything that can be come to in a dialog says a name and a role to those who hear it read. */
@NeedsDisplay
class DialogNamesWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final List<String> faults = new ArrayList<>();
    private DemoDesk demo;
    private WorkbenchFrame window;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        demo = EventThread.call(() -> DemoDesk.filled(folder));
        window = EventThread.call(demo::open);
        EventThread.run(() -> window.openMix(new MixId("HG-101")));
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(window::close);
    }

    private void look(String what, Runnable opening) throws Exception {
        faults.addAll(OpenedDialog.faults(what, opening));
    }

    private JMenuItem item(String name) {
        JMenuBar bar = window.frame().getJMenuBar();
        return Stream.iterate(0, at -> at + 1)
                .limit(bar.getMenuCount())
                .map(bar::getMenu)
                .flatMap(DialogNamesWindowTest::items)
                .filter(each -> name.equals(each.getName()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name));
    }

    private static Stream<JMenuItem> items(JMenu menu) {
        return Stream.of(menu.getMenuComponents())
                .filter(JMenuItem.class::isInstance)
                .map(JMenuItem.class::cast);
    }

    private void turnTo(String page) throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named(page).orElseThrow()));
    }

    private void press(String button) throws Exception {
        look(
                button,
                () -> Named.in(window.content(), AbstractButton.class, button).doClick(0));
    }

    @Test
    void soDoTheDialogsOfTheMenus() throws Exception {
        for (String name : List.of(
                "menu.bench",
                "menu.laboratory",
                "menu.profiles",
                "menu.balance",
                "menu.steps",
                "menu.keys",
                "menu.words",
                "menu.cautions",
                "menu.about")) {
            look(name, () -> item(name).doClick(0));
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void soDoTheDialogsOfThePages() throws Exception {
        turnTo("register");
        press("register.manyCards");
        turnTo("cards");
        press("cards.check");
        turnTo("trials");
        Path csv = folder.resolve("mixes.csv");
        Files.copy(Path.of("demo-data").resolve("mix-design.csv"), csv);
        demo.asker.manyToOpen.add(List.of(csv));
        look("import", () -> window.work().commands().importCsv());
        assertThat(faults).isEmpty();
    }

    @Test
    void soDoesWhatAsksAndTells() throws Exception {
        SwingAsker asker = new SwingAsker(Locale.ENGLISH, Settings.inMemory(), Optional::empty);
        asker.serve(demo.desk);
        JComponent over = window.content();
        look("reason", () -> asker.reason(over, "Strike a trial", "Why does it not count?", "Strike"));
        look("remark", () -> asker.remark(over, "Give the card", "Is it given?", "Give"));
        look("name", () -> asker.name(over, "Who", "Who approves it?", "Approve"));
        look("confirm", () -> asker.confirm(over, "Replace", "Replace the file?", "Replace"));
        look("tell", () -> asker.tell(over, "Done", "All of it is saved."));
        look("long tell", () -> asker.tell(over, "Done", "All of it is saved.\n".repeat(60)));
        look("failure", () -> asker.failure(over, "Saving", new IllegalStateException("The disk is full.")));
        look(
                "problems",
                () -> asker.problems(over, "Problems", List.of(Problem.notANumber("batchVolume", "the volume", "x"))));
        look(
                "both",
                () -> asker.both(
                        over,
                        "Mix HG-101",
                        new Stamp("Other Person", Instant.parse("2026-11-25T08:00:00Z"), "corrected"),
                        2,
                        List.of(new TwoVersions.Line("title", "A", "B", "C", true))));
        demo.desk.setPerson("");
        look("person", () -> asker.person(over));
        look("file to open", () -> asker.fileToOpen(over, "Open", ".porebench"));
        look(
                "file to write",
                () -> asker.fileToWrite(over, "Save", "plot.png", List.of(new Asker.Kind("png", "Picture"))));
        look("folder", () -> asker.folder(over, "Folder"));
        assertThat(faults).isEmpty();
    }
}
