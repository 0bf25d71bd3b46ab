package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.NeedsDisplay;
import porebench.desk.Page;
import porebench.desk.form.UnitSystem;
import porebench.evidence.FactorState;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** Opens the real window on the demo laboratory in a real file, visits everything, and closes it. */
@NeedsDisplay
class WorkbenchWindowTest {
    private static final MixId FIRST = new MixId("HG-101");
    private static final MixId OTHER = new MixId("HG-106");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private DemoDesk demo;
    private WorkbenchFrame window;

    @BeforeEach
    void openWindow() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        demo = EventThread.call(() -> DemoDesk.filled(folder));
        window = EventThread.call(() -> demo.open());
    }

    @AfterEach
    void closeWindow() throws Exception {
        if (!window.isClosed()) {
            EventThread.run(() -> window.pages().all().forEach(Page::dropDraft));
            EventThread.run(window::close);
        }
        assertThat(window.isClosed()).isTrue();
        assertThat(window.frame().isDisplayable()).isFalse();
    }

    @Test
    void everyPageOfEveryMixShows() throws Exception {
        assertThat(window.pages().all()).extracting(Page::name).hasSize(18).doesNotHaveDuplicates();
        for (MixId mix : demo.desk.rows().stream().map(row -> row.mixId()).toList()) {
            EventThread.run(() -> window.openMix(mix));
            visitAllPages();
        }
        assertThat(demo.asker.asked).isEmpty();
    }

    @Test
    void everyPageShowsInBothUnitSystemsAndBothThemes() throws Exception {
        for (Theme theme : List.of(Theme.DARK, Theme.LIGHT)) {
            EventThread.run(() -> window.show(theme));
            for (UnitSystem units : List.of(UnitSystem.US, UnitSystem.SI)) {
                EventThread.run(() -> window.show(units));
                visitAllPages();
            }
        }
        assertThat(demo.asker.asked).isEmpty();
    }

    @Test
    void onlyPagesThatWereLookedAtAreMade() throws Exception {
        assertThat(made()).containsExactly(window.current().name());
        Page sources = window.pages().named("sources").orElseThrow();
        EventThread.run(() -> window.turnTo(sources));
        assertThat(made()).containsExactly("mix", "sources");
    }

    private List<String> made() {
        return window.pages().all().stream()
                .filter(page -> page.place().getComponentCount() > 0)
                .map(Page::name)
                .toList();
    }

    private void visitAllPages() throws Exception {
        for (Page page : window.pages().all()) {
            EventThread.run(() -> window.turnTo(page));
            assertThat(window.current()).isSameAs(page);
            assertThat(page.component().isShowing()).as(page.name()).isTrue();
            assertThat(window.desk().unsaved().names(""))
                    .as("kept as typed by looking at " + page.name())
                    .isEmpty();
        }
    }

    @Test
    void theHeadSaysStateFactorAndWhatToDo() throws Exception {
        EventThread.run(() -> window.openMix(OTHER));
        assertThat(label("head.title").getText()).startsWith("HG-106");
        assertThat(label("head.state").getText()).isEqualTo("source changed");
        assertThat(label("head.factor").getText()).isEqualTo("G 0.4 %");
        assertThat(label("head.factor").getFont().getSize())
                .as("nobody may subtract it")
                .isLessThan(label("head.title").getFont().getSize());
        EventThread.run(() -> window.openMix(FIRST));
        assertThat(label("head.factor").getFont().getSize())
                .isGreaterThan(label("head.title").getFont().getSize());
    }

    @Test
    void findingAMixLeavesOnlyThoseWithThatInTheirName() throws Exception {
        JList<?> mixes = (JList<?>) named("mixes");
        assertThat(mixes.getModel().getSize()).isEqualTo(8);
        EventThread.run(() -> ((JTextField) named("findMix")).setText("two sands"));
        assertThat(mixes.getModel().getSize()).isEqualTo(1);
        EventThread.run(() -> ((JTextField) named("findMix")).setText(""));
        assertThat(mixes.getModel().getSize()).isEqualTo(8);
    }

    @Test
    void aMetersPageOpensFromItsRegisterAndLeadsBack() throws Exception {
        Page meters = window.pages().named("meters").orElseThrow();
        EventThread.run(() -> window.turnTo(meters));
        JTable table = (JTable) named("meter.table");
        String id = String.valueOf(table.getValueAt(1, 0));
        EventThread.run(() -> table.setRowSelectionInterval(1, 1));
        EventThread.run(() -> button("meter.open").doClick());
        assertThat(window.current().name()).isEqualTo("meter");
        assertThat(((JTextComponent) named("meter.heading")).getText()).startsWith("Meter " + id + " ");
        EventThread.run(() -> button("meter.begin").doClick());
        EventThread.run(() -> ((JTextComponent) named("by")).setText("somebody else"));
        EventThread.run(() -> window.openMix(OTHER));
        assertThat(window.current().name()).isEqualTo("mix");
        EventThread.run(() -> window.turnTo(meters));
        EventThread.run(() -> button("meter.open").doClick());
        assertThat(((JTextComponent) named("by")).getText()).isEqualTo("somebody else");
        assertThat(demo.asker.asked).isEmpty();
        EventThread.run(() -> window.current().dropDraft());
        EventThread.run(() -> button("meter.back").doClick());
        assertThat(window.current()).isSameAs(meters);
    }

    @Test
    void aPointOfAPlotLeadsToItsTrialInSight() throws Exception {
        EventThread.run(() -> window.openMix(FIRST));
        EventThread.run(() -> window.turnTo(window.pages().named("variability").orElseThrow()));
        EventThread.settle();
        JComponent plot = (JComponent) named("plot.over-time");
        for (String stroke : List.of("RIGHT", "RIGHT", "ENTER")) {
            EventThread.run(() -> {
                Object key = plot.getInputMap().get(KeyStroke.getKeyStroke(stroke));
                plot.getActionMap().get(key).actionPerformed(new ActionEvent(plot, 0, stroke));
            });
        }
        EventThread.settle();
        assertThat(window.current().name()).isEqualTo("trials");
        JTable trials = (JTable) named("trials");
        assertThat(trials.getSelectedRow()).isEqualTo(1);
        assertThat(trials.getValueAt(1, 0)).isEqualTo("T-002");
        assertThat(trials.getVisibleRect().contains(trials.getCellRect(1, 0, true)))
                .isTrue();
    }

    @Test
    void whatIsTypedIsLeftWithoutAQuestionAndFoundAgainWhereItWasTyped() throws Exception {
        EventThread.run(() -> window.openMix(FIRST));
        Page sources = window.pages().named("sources").orElseThrow();
        EventThread.run(() -> window.turnTo(sources));
        EventThread.run(() -> ((JTextField) named("ledge")).setText("another ledge"));
        JTable table = (JTable) named("source.table");
        EventThread.run(() -> table.setRowSelectionInterval(1, 1));
        assertThat(((JTextField) named("ledge")).getText()).isNotEqualTo("another ledge");
        EventThread.run(() -> window.openTrial(new TrialId("T-002")));
        assertThat(window.current().name()).isEqualTo("trials");
        EventThread.run(() -> ((JTextField) named("fine")).setText("4868"));
        EventThread.run(() -> window.openMix(OTHER));
        assertThat(demo.desk.selected()).contains(OTHER);
        assertThat(((JTextField) named("fine")).getText()).isEmpty();
        EventThread.run(() -> window.turnTo(sources));
        EventThread.run(() -> table.setRowSelectionInterval(0, 0));
        assertThat(((JTextField) named("ledge")).getText()).isEqualTo("another ledge");
        EventThread.run(() -> window.openMix(FIRST));
        EventThread.run(() -> window.turnTo(window.pages().named("trials").orElseThrow()));
        assertThat(((JTextField) named("fine")).getText()).isEqualTo("4868");
        assertThat(demo.asker.asked).isEmpty();
        EventThread.run(window::close);
        assertThat(EventThread.comes(window::isClosed)).isTrue();
        assertThat(demo.asker.asked).isEmpty();
    }

    @Test
    void anotherLedgeIsKeptWithItsReasonAndMakesTheFactorsOfItsMixesUntrue() throws Exception {
        Page sources = window.pages().named("sources").orElseThrow();
        EventThread.run(() -> window.turnTo(sources));
        JTable table = (JTable) named("source.table");
        EventThread.run(() -> table.setRowSelectionInterval(1, 1));
        EventThread.run(() -> ((JTextField) named("ledge")).setText("bench 9"));
        EventThread.run(() -> button("source.save").doClick());
        assertThat(demo.desk.book().history(Source.class, "S-02"))
                .as("nothing is kept that does not say what it is")
                .hasSize(1);
        EventThread.run(() -> ((JComboBox<?>) named("step")).setSelectedIndex(1));
        EventThread.run(() -> ((JTextField) named("changedOn"))
                .setText(demo.desk.tools().today().toString()));
        EventThread.run(() -> ((JTextField) named("reason")).setText("the quarry moved"));
        demo.asker.confirmations.add(true);
        EventThread.run(() -> button("source.save").doClick());

        List<Version<Source>> versions = demo.desk.book().history(Source.class, "S-02");
        Version<Source> newest = versions.get(versions.size() - 1);
        assertThat(newest.value().ledge()).isEqualTo("bench 9");
        assertThat(newest.stamp().why()).isEqualTo("the quarry moved");
        assertThat(newest.stamp().who()).isEqualTo("Test Person");
        assertThat(demo.desk.rows().stream()
                        .filter(row -> row.mixId().equals(FIRST))
                        .map(row -> row.state()))
                .containsExactly(FactorState.SOURCE_CHANGED);
    }

    @Test
    void aLanguageIsRememberedForTheNextTimeAndSaidInBothLanguages() throws Exception {
        JMenu languages = (JMenu) item("menu.language");
        JMenuItem spanish = Stream.of(languages.getMenuComponents())
                .map(JMenuItem.class::cast)
                .filter(each -> "menu.language.es-419".equals(each.getName()))
                .findFirst()
                .orElseThrow();
        assertThat(spanish.getText()).isEqualTo("Español (América)");
        EventThread.run(spanish::doClick);
        assertThat(demo.memory.language()).isEqualTo(Language.SPANISH_AMERICAS);
        assertThat(demo.asker.told).singleElement().asString().contains("next time", "próxima vez");
        assertThat(item("menu.new").getText()).isEqualTo("New …");
    }

    @Test
    void aFileThatIsNoLabBookIsRefusedAndTheLabBookBeforeStaysOpen() throws Exception {
        Path noBook = Files.writeString(folder.resolve("letter.txt"), "Dear laboratory");
        LabBook before = demo.desk.book();
        demo.asker.filesToOpen.add(noBook);
        EventThread.run(() -> item("menu.open").doClick());
        assertThat(demo.asker.problemsShown)
                .extracting(problem -> problem.code())
                .containsExactly("book.not-a-lab-book");
        assertThat(demo.desk.book()).isSameAs(before);
        assertThat(demo.desk.rows()).hasSize(8);
        assertThat(noBook).hasContent("Dear laboratory");
    }

    @Test
    void aNewLabBookSaysWhatToDoFirstAndANewMixCanBeBegun() throws Exception {
        demo.asker.newFiles.add(folder.resolve("new.porebench"));
        EventThread.run(() -> item("menu.new").doClick());
        assertThat(demo.desk.rows()).isEmpty();
        assertThat(named("welcome").isShowing()).isTrue();
        EventThread.run(() -> button("welcome.newMix").doClick());
        assertThat(named("welcome").isShowing()).isFalse();
        assertThat(window.current().name()).isEqualTo("mix");
        assertThat(window.current().component().isShowing()).isTrue();
        assertThat(demo.memory.recentFiles().get(0)).isEqualTo(folder.resolve("new.porebench"));
    }

    @Test
    void copyExportAndCheckTellWhatTheyDid() throws Exception {
        Path copy = folder.resolve("copy.porebench");
        Path sheets = Files.createDirectory(folder.resolve("sheets"));
        demo.asker.newFiles.add(copy);
        demo.asker.folders.add(sheets);
        EventThread.run(() -> item("menu.copy").doClick());
        EventThread.run(() -> item("menu.export").doClick());
        EventThread.run(() -> item("menu.verify").doClick());
        assertThat(demo.asker.failures).isEmpty();
        assertThat(demo.asker.problemsShown).isEmpty();
        assertThat(demo.asker.told).hasSize(3);
        assertThat(copy).isNotEmptyFile();
        try (Stream<Path> files = Files.list(sheets)) {
            assertThat(files).isNotEmpty();
        }
    }

    @Test
    void whatAnotherWindowKeptIsSeenHere() throws Exception {
        try (LabBook otherWindow = demo.desk.tools().shelf().open(demo.file)) {
            Version<Source> source = otherWindow.latest(Source.class, "S-02").orElseThrow();
            Source moved = new Source(
                    source.value().id(),
                    source.value().name(),
                    source.value().role(),
                    source.value().place(),
                    "another bench",
                    source.value().relativeDensity(),
                    source.value().absorptionPercent(),
                    source.value().remarks());
            assertThat(otherWindow.keep(List.of(Draft.correcting(source, moved)), "Somebody", "moved"))
                    .isEmpty();
        }
        EventThread.run(demo.desk::refresh);
        assertThat(demo.desk.rows().get(0).state()).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(label("head.state").getText()).isEqualTo("source changed");
    }

    @Test
    void theWindowRemembersPageMixUnitsThemeAndPerson() throws Exception {
        EventThread.run(() -> window.openMix(OTHER));
        EventThread.run(() -> window.turnTo(window.pages().named("variability").orElseThrow()));
        EventThread.run(() -> window.show(UnitSystem.US));
        EventThread.run(() -> window.show(Theme.DARK));
        EventThread.run(() -> demo.desk.setPerson("M. Quist"));
        EventThread.run(window::close);
        assertThat(demo.memory.page()).isEqualTo("variability");
        assertThat(demo.memory.mix()).isEqualTo("HG-106");
        assertThat(demo.memory.units()).isEqualTo(UnitSystem.US);
        assertThat(demo.memory.theme()).isEqualTo(Theme.DARK);
        assertThat(demo.memory.person()).isEqualTo("M. Quist");
        assertThat(demo.memory.recentFiles()).containsExactly(demo.file.toAbsolutePath());
    }

    @Test
    void theRegisterShowsOnlyWhatNeedsAttentionAndOpensAMix() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("register").orElseThrow()));
        JTable table = (JTable) named("register.table");
        assertThat(table.getRowCount()).isEqualTo(8);
        EventThread.run(() -> ((JComboBox<?>) named("register.views")).setSelectedIndex(1));
        assertThat(table.getRowCount()).isLessThan(8).isPositive();
        EventThread.run(() -> table.setRowSelectionInterval(0, 0));
        String mix = String.valueOf(table.getValueAt(0, 1));
        EventThread.run(() -> button("register.open").doClick());
        assertThat(demo.desk.selected()).contains(new MixId(mix));
        assertThat(window.current().name()).isEqualTo("mix");
    }

    private JLabel label(String name) {
        return (JLabel) named(name);
    }

    private AbstractButton button(String name) {
        return (AbstractButton) named(name);
    }

    private Component named(String name) {
        return find(window.content(), name)
                .orElseThrow(() -> new AssertionError("there is no component named " + name));
    }

    /** Returns a component by its name, one that is showing before one that is not. */
    private static Optional<Component> find(Container parent, String name) {
        List<Component> all =
                all(parent).filter(each -> name.equals(each.getName())).toList();
        return all.stream()
                .filter(Component::isShowing)
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    private static Stream<Component> all(Container parent) {
        return Stream.of(parent.getComponents())
                .flatMap(each -> Stream.concat(
                        Stream.of(each), each instanceof Container container ? all(container) : Stream.empty()));
    }

    private JMenuItem item(String name) {
        return Stream.of(window.frame().getJMenuBar().getComponents())
                .flatMap(menu -> Stream.of(((JMenu) menu).getMenuComponents()))
                .filter(each -> name.equals(each.getName()))
                .map(JMenuItem.class::cast)
                .findFirst()
                .orElseThrow();
    }
}
