package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.event.KeyEvent;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.ScriptedAsker;
import porebench.exchange.DemoYear;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** Files are brought in together, as a person says they are written, by the menu and by dropping them, with real keys. */
@NeedsDisplay
class ImportWindowTest {
    /** In no order that records could be kept in. */
    private static final List<String> NINE = List.of(
            "factor-issues.csv",
            "trial-sheet.csv",
            "determinations.csv",
            "mix-design.csv",
            "meter-calibration.csv",
            "meters.csv",
            "equipment.csv",
            "sources.csv",
            "laboratory.csv");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openAnEmptyLabBook() throws Exception {
        keys = new Keys();
        Path file = folder.resolve("empty.porebench");
        new SqliteShelf(DemoDesk.DAY).create(file).close();
        started = new StartedWindow(folder, asker);
        window = started.window();
        EventThread.run(() -> window.turning().first(Optional.of(file)));
        assertThat(EventThread.comes(() -> window.desk().hasBook())).isTrue();
        EventThread.run(() -> window.desk().setPerson("R. Vale"));
    }

    @AfterEach
    void closeWindow() throws Exception {
        for (Window each : Window.getWindows()) {
            if (each instanceof JDialog) {
                EventThread.run(each::dispose);
            }
        }
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private static List<Path> demo(List<String> names) {
        return names.stream().map(name -> Path.of("demo-data", name)).toList();
    }

    private static Optional<JDialog> dialog() {
        return Stream.of(Window.getWindows())
                .filter(one -> one.isShowing() && "ask".equals(one.getName()))
                .map(JDialog.class::cast)
                .findFirst();
    }

    private static <T extends Component> T inDialog(Class<T> type, String name) {
        return Named.in(dialog().orElseThrow(), type, name);
    }

    private boolean dialogComes() throws Exception {
        return EventThread.comesWithin(20, () -> dialog().isPresent());
    }

    private boolean isTold(String words) throws Exception {
        return EventThread.comesWithin(20, () -> asker.told.stream().anyMatch(one -> one.contains(words)));
    }

    private int trials() throws Exception {
        LabBook book = EventThread.call(() -> window.desk().book());
        return book.latest(Trial.class).size();
    }

    private void focus(Component part) throws Exception {
        EventThread.run(part::requestFocusInWindow);
        assertThat(EventThread.comesWithin(10, part::isFocusOwner))
                .as(
                        "the keyboard is at %s",
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
                .isTrue();
    }

    @Test
    void nineFilesAreOneImportInTheOrderTheyNeed() throws Exception {
        asker.manyToOpen.add(demo(NINE));
        asker.confirmations.add(true);
        started.choose("menu.import");
        if (EventThread.comesWithin(15, () -> dialog().isPresent() || !asker.told.isEmpty()) && dialog().isPresent()) {
            JTable problems = inDialog(JTable.class, "problems");
            for (int row = 0; row < problems.getRowCount(); row++) {
                assertThat(problems.getValueAt(row, 0)).as("row %s", row).isEqualTo("doubtful");
            }
            focus(inDialog(JButton.class, "keepGood"));
            keys.strike(KeyEvent.VK_SPACE);
        }
        assertThat(isTold("trials")).as("told %s", asker.told).isTrue();
        assertThat(asker.told).hasSize(1);
        assertThat(trials()).isPositive();
        LabBook book = EventThread.call(() -> window.desk().book());
        assertThat(book.history(Source.class, "S-01").get(0).stamp().why())
                .contains("laboratory.csv")
                .contains("factor-issues.csv");
        assertThat(window.desk().rows()).hasSize(8);
    }

    private Path semicolons() throws Exception {
        Path file = folder.resolve("quellen.csv");
        Files.write(
                file,
                List.of(
                        "source_id;name;role;place;ledge;relative_density;absorption_pct;remarks",
                        "S-70;Sand, washed;fine;Pit;bench 1;2,62;1,1;",
                        "S-71;Granite;coarse;Quarry;bench 2;2,69;0,6;"),
                StandardCharsets.UTF_8);
        return file;
    }

    /** Returns how wide a box must be for what is chosen in it. */
    private static <T> int neededBy(JComboBox<T> box) {
        box.setPrototypeDisplayValue(null);
        return box.getPreferredSize().width;
    }

    @Test
    void semicolonsAndDecimalCommasAreOfferedAndReadWhenAPersonSaysSo() throws Exception {
        asker.manyToOpen.add(List.of(semicolons(), Path.of("demo-data", "meters.csv")));
        started.choose("menu.import");
        assertThat(dialogComes()).isTrue();
        JComboBox<?> apart = inDialog(JComboBox.class, "import.apart");
        JComboBox<?> decimal = inDialog(JComboBox.class, "import.decimal");
        assertThat(apart.getSelectedIndex()).isZero();
        assertThat(decimal.getSelectedIndex()).isZero();
        assertThat(inDialog(JTable.class, "import.rows").getColumnCount()).isEqualTo(1);
        assertThat(inDialog(JButton.class, "readAnew").isEnabled()).isFalse();
        assertThat(inDialog(JTable.class, "problems").getColumnName(1)).isEqualTo("File");
        assertThat(inDialog(JTable.class, "problems").getValueAt(0, 1)).isEqualTo("quellen.csv");
        JDialog first = dialog().orElseThrow();
        focus(apart);
        keys.strikeUntil(() -> apart.getSelectedIndex() == 1, "the semicolon", KeyEvent.VK_DOWN);
        assertThat(EventThread.comes(() -> inDialog(JTable.class, "import.rows").getColumnCount() == 8))
                .isTrue();
        assertThat(inDialog(JTable.class, "import.rows").getValueAt(0, 5)).isEqualTo("2,62");
        focus(decimal);
        keys.strikeUntil(() -> decimal.getSelectedIndex() == 1, "the decimal comma", KeyEvent.VK_DOWN);
        assertThat(EventThread.comes(() ->
                        "2.62".equals(inDialog(JTable.class, "import.rows").getValueAt(0, 5))))
                .isTrue();
        for (JComboBox<?> box : List.of(apart, decimal)) {
            assertThat(EventThread.call(() -> box.getWidth() >= neededBy(box)))
                    .as(box.getName() + " says all of it")
                    .isTrue();
        }
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comesWithin(20, () -> dialog().isPresent() && dialog().orElseThrow() != first))
                .isTrue();
        JButton keep = inDialog(JButton.class, "keepGood");
        assertThat(keep.getText()).contains("5");
        assertThat(inDialog(JButton.class, "readAnew").isEnabled()).isFalse();
        focus(keep);
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(isTold("sources")).as("told %s", asker.told).isTrue();
        LabBook book = EventThread.call(() -> window.desk().book());
        assertThat(book.latest(Source.class, "S-70")
                        .orElseThrow()
                        .value()
                        .relativeDensity()
                        .orElseThrow())
                .hasToString("2.62");
    }

    @Test
    void ofSeveralFilesEachCanBeLookedAt() throws Exception {
        Path meters = folder.resolve("messer.csv");
        Files.write(meters, List.of("meter_id;meter_type;serial", "Z-1;B;77"), StandardCharsets.UTF_8);
        asker.manyToOpen.add(List.of(semicolons(), meters));
        started.choose("menu.import");
        assertThat(dialogComes()).isTrue();
        JComboBox<?> shown = inDialog(JComboBox.class, "import.shown");
        JComboBox<?> apart = inDialog(JComboBox.class, "import.apart");
        focus(apart);
        keys.strikeUntil(() -> apart.getSelectedIndex() == 1, "the semicolon", KeyEvent.VK_DOWN);
        focus(shown);
        keys.strikeUntil(() -> shown.getSelectedIndex() == 1, "the other file", KeyEvent.VK_DOWN);
        assertThat(EventThread.comes(() -> inDialog(JTable.class, "import.rows").getColumnCount() == 3))
                .isTrue();
        assertThat(inDialog(JTable.class, "import.rows").getValueAt(0, 0)).isEqualTo("Z-1");
        assertThat(apart.getSelectedIndex()).isEqualTo(1);
    }

    @Test
    void withoutAnyWordOfAPersonNothingIsReadOtherwise() throws Exception {
        asker.manyToOpen.add(List.of(semicolons()));
        started.choose("menu.import");
        assertThat(dialogComes()).isTrue();
        assertThat(inDialog(JTable.class, "problems").getRowCount()).isEqualTo(1);
        JDialog first = dialog().orElseThrow();
        focus(inDialog(JComboBox.class, "import.apart"));
        keys.strikeUntil(() -> !first.isShowing(), "the end of the dialog", KeyEvent.VK_ESCAPE);
        EventThread.settle();
        LabBook book = EventThread.call(() -> window.desk().book());
        assertThat(book.latest(Source.class)).isEmpty();
    }

    /** Two trials of one mix within four minutes, and one of another mix, as a spreadsheet with decimal commas saves them. */
    private Path trialsWithCommas() throws Exception {
        Path file = folder.resolve("probe.csv");
        String rest = ";B-1;B;7,05;L;5189;7126;g;16;20,5;439;mL;6,5;;;no;";
        Files.write(
                file,
                List.of(
                        "trial_id;mix_id;tested_at;operator;meter_id;meter_type;bowl_volume;bowl_volume_unit;fine_mass;"
                                + "coarse_mass;mass_unit;soak_minutes;water_temp_c;withdrawn;withdrawn_unit;gauge_pct;"
                                + "h1_pct;h2_pct;leak;remarks",
                        "X-1;HG-108;2026-11-24T10:00;M. Quist" + rest,
                        "X-2;HG-108;2026-11-24T10:04;M. Quist" + rest,
                        "X-3;HG-101;2026-11-24T12:00;M. Quist" + rest),
                StandardCharsets.UTF_8);
        return file;
    }

    private static Optional<String> kept(LabBook book, String trial) {
        return book.latest(Trial.class, trial).flatMap(found -> found.value().keptBecause());
    }

    @Test
    void theImportOfTheTrialsPageIsTheSameAndDoubtedTrialsAreKeptForAReasonOnly() throws Exception {
        LabBook book = EventThread.call(() -> window.desk().book());
        new DemoYear().fill(book);
        EventThread.run(() -> window.desk().refresh());
        assertThat(EventThread.comesWithin(10, () -> !window.desk().rows().isEmpty()))
                .isTrue();
        EventThread.run(() -> window.desk().select(new MixId("HG-108")));
        assertThat(EventThread.comesWithin(
                        10,
                        () -> window.desk().selected().equals(Optional.of(new MixId("HG-108")))
                                && window.desk().evidence().isPresent()))
                .isTrue();
        EventThread.run(() -> window.turnTo(window.pages().trials()));
        assertThat(EventThread.comesWithin(
                        10, () -> window.pages().trials().page().component().isShowing()))
                .isTrue();
        JButton importing = Named.in(window.pages().trials().place(), JButton.class, "import");
        for (String reason : List.of("", "clock of the bench was wrong")) {
            asker.manyToOpen.add(List.of(trialsWithCommas()));
            if (!reason.isEmpty()) {
                asker.reasons.add(reason);
            }
            int asked = asker.asked.size();
            focus(importing);
            keys.strike(KeyEvent.VK_SPACE);
            readWithSemicolonsAndCommas();
            assertThat(inDialog(JTable.class, "problems").getRowCount()).isEqualTo(2);
            focus(inDialog(JButton.class, "keepGood"));
            keys.strike(KeyEvent.VK_SPACE);
            assertThat(EventThread.comesWithin(
                            10,
                            () -> asker.asked.subList(asked, asker.asked.size()).contains("Save what is doubtful")))
                    .isTrue();
            EventThread.settle();
            if (reason.isEmpty()) {
                assertThat(book.latest(Trial.class, "X-1")).isEmpty();
            }
        }
        assertThat(isTold("trials: 2")).as("told %s", asker.told).isTrue();
        assertThat(kept(book, "X-2")).contains("clock of the bench was wrong");
        assertThat(book.latest(Trial.class, "X-3")).isEmpty();
    }

    private void readWithSemicolonsAndCommas() throws Exception {
        assertThat(dialogComes()).isTrue();
        JDialog first = dialog().orElseThrow();
        JComboBox<?> apart = inDialog(JComboBox.class, "import.apart");
        focus(apart);
        keys.strikeUntil(() -> apart.getSelectedIndex() == 1, "the semicolon", KeyEvent.VK_DOWN);
        JComboBox<?> decimal = inDialog(JComboBox.class, "import.decimal");
        focus(decimal);
        keys.strikeUntil(() -> decimal.getSelectedIndex() == 1, "the decimal comma", KeyEvent.VK_DOWN);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comesWithin(20, () -> dialog().isPresent() && dialog().orElseThrow() != first))
                .isTrue();
    }

    private boolean drop(Path... files) throws Exception {
        List<File> list = new ArrayList<>();
        Stream.of(files).forEach(file -> list.add(file.toFile()));
        Transferable dragged = new Transferable() {
            @Override
            public DataFlavor[] getTransferDataFlavors() {
                return new DataFlavor[] {DataFlavor.javaFileListFlavor};
            }

            @Override
            public boolean isDataFlavorSupported(DataFlavor flavor) {
                return flavor.equals(DataFlavor.javaFileListFlavor);
            }

            @Override
            public Object getTransferData(DataFlavor flavor) {
                return list;
            }
        };
        return EventThread.call(() -> {
            TransferHandler handler = window.content().getTransferHandler();
            return handler.importData(new TransferHandler.TransferSupport(window.content(), dragged));
        });
    }

    @Test
    void droppedSheetsAreOneImport() throws Exception {
        asker.confirmations.add(true);
        assertThat(drop(Path.of("demo-data", "meters.csv"), Path.of("demo-data", "sources.csv")))
                .isTrue();
        assertThat(isTold("meters")).as("told %s", asker.told).isTrue();
        assertThat(asker.told.get(0)).contains("sources");
    }

    @Test
    void aDroppedLabBookIsOfferedToBeOpened() throws Exception {
        started.makeDemo(started.demoFile());
        drop(started.demoFile());
        assertThat(EventThread.comes(() -> !asker.asked.isEmpty())).isTrue();
        assertThat(window.desk().rows()).isEmpty();
        asker.confirmations.add(true);
        drop(started.demoFile());
        assertThat(EventThread.comesWithin(30, () -> window.desk().rows().size() == 8))
                .isTrue();
    }

    @Test
    void aLabBookAmongSheetsIsToldAndNothingIsDone() throws Exception {
        drop(folder.resolve("empty.porebench"), Path.of("demo-data", "meters.csv"));
        assertThat(isTold("alone")).as("told %s", asker.told).isTrue();
        assertThat(asker.asked).isEmpty();
    }

    @Test
    void fieldsTablesAndListsLeaveADropToTheWindow() throws Exception {
        assertThat(Named.in(window.content(), JTextField.class, "findMix")
                        .getDropTarget()
                        .isActive())
                .isFalse();
        assertThat(window.content().getDropTarget().isActive()).isTrue();
        EventThread.run(() -> window.show(Theme.DARK));
        EventThread.run(() -> window.turnTo(window.pages().named("meters").orElseThrow()));
        assertThat(Named.in(window.content(), JTextField.class, "findMix")
                        .getDropTarget()
                        .isActive())
                .isFalse();
        assertThat(Named.in(window.content(), JTable.class, "meter.table")
                        .getDropTarget()
                        .isActive())
                .isFalse();
        EventThread.run(() -> window.show(Theme.LIGHT));
    }
}
