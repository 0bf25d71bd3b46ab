package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Page;
import porebench.desk.ScriptedAsker;
import porebench.evidence.JudgedTrial;
import porebench.evidence.practice.PracticeRun;
import porebench.record.id.MixId;

/** Begins a training book in the window, has trials simulated in it with the keys, and is told what was planted. */
@NeedsDisplay
class PracticeWindowTest {
    private static final MixId MIX = new MixId("HG-101");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;

    @BeforeEach
    void openWindow() throws Exception {
        started = new StartedWindow(folder, asker);
        window = started.window();
    }

    @AfterEach
    void closeWindow() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    /** Begins a training book from the page without a lab book, with the keyboard. */
    private void beginTraining() throws Exception {
        EventThread.run(() -> window.turning().open(folder.resolve("none.porebench")));
        assertThat(EventThread.comes(() -> button("noBook.open").isFocusOwner()))
                .isTrue();
        asker.newFiles.add(folder.resolve("school.porebench"));
        Keys keys = new Keys();
        for (String next : List.of("noBook.new", "noBook.restore", "noBook.rebuild", "noBook.training")) {
            keys.strikeUntil(() -> button(next).isFocusOwner(), next, KeyEvent.VK_TAB);
        }
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(started.comesOpen()).isTrue();
        EventThread.run(() -> window.openMix(MIX));
    }

    private JButton button(String name) {
        return Named.in(window.content(), JButton.class, name);
    }

    private JComponent band() {
        return Named.in(window.content(), JComponent.class, "training");
    }

    private static Optional<JDialog> dialog() {
        return Stream.of(Window.getWindows())
                .filter(each -> each instanceof JDialog && each.isShowing() && "ask".equals(each.getName()))
                .map(JDialog.class::cast)
                .findFirst();
    }

    private JDialog asked() throws Exception {
        assertThat(EventThread.comes(() -> dialog().filter(Window::isFocused).isPresent()))
                .isTrue();
        return EventThread.call(() -> dialog().orElseThrow());
    }

    /** Asks for simulated trials by the key, chooses what goes wrong, and takes what is offered otherwise. */
    private void simulate(int whatGoesWrong) throws Exception {
        focusOnTheMixes();
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_T);
        JDialog dialog = asked();
        EventThread.run(() -> Named.in(dialog, JComboBox.class, "fault").setSelectedIndex(whatGoesWrong));
        new Keys().strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> !dialog.isShowing())).isTrue();
    }

    private void focusOnTheMixes() throws Exception {
        // The window is in front again only some time after a dialog over it is gone.
        assertThat(EventThread.comes(() -> {
                    JList<?> mixes = Named.in(window.content(), JList.class, "mixes");
                    mixes.requestFocus();
                    return mixes.isFocusOwner();
                }))
                .isTrue();
    }

    private List<JudgedTrial> trials() throws Exception {
        return EventThread.call(this::trialsNow);
    }

    private String planted() throws Exception {
        asker.told.clear();
        JMenu menu = practiceMenu();
        EventThread.run(() -> Named.in(menu.getPopupMenu(), JMenuItem.class, "menu.practice.planted")
                .doClick(0));
        assertThat(EventThread.comes(() -> !asker.told.isEmpty())).isTrue();
        return asker.told.get(0);
    }

    private JMenu practiceMenu() {
        return Named.in(window.frame().getJMenuBar(), JMenu.class, "menu.practice");
    }

    @Test
    void aTrainingBookIsBegunFromThePageAndMarkedOnEveryPage() throws Exception {
        beginTraining();
        assertThat(EventThread.call(() -> practiceMenu().isVisible())).isTrue();
        assertThat(window.frame().getTitle()).isEqualTo("SIMULATED – school.porebench – Porebench");
        for (Page page : window.pages().all()) {
            EventThread.run(() -> window.turnTo(page));
            assertThat(EventThread.call(() -> band().isShowing()
                            && band().getWidth() == window.content().getWidth()))
                    .as(page.name())
                    .isTrue();
        }
    }

    @Test
    void aRealBookHasNeitherBandNorPractice() throws Exception {
        started.startWith(null);
        assertThat(EventThread.call(() -> band().isShowing())).isFalse();
        assertThat(EventThread.call(() -> practiceMenu().isVisible())).isFalse();
        focusOnTheMixes();
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_T);
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_O);
        assertThat(EventThread.comes(() -> !asker.asked.isEmpty())).isTrue();
        assertThat(asker.asked).containsExactly("Open a lab book");
    }

    @Test
    void whereNothingIsPlantedNothingIsDoubtful() throws Exception {
        beginTraining();
        simulate(1);
        assertThat(EventThread.comes(() -> !trialsNow().isEmpty())).isTrue();
        assertThat(trials()).hasSize(6).allSatisfy(trial -> {
            assertThat(trial.trial().value().simulated()).isTrue();
            assertThat(trial.figures().problems()).isEmpty();
        });
        assertThat(planted()).contains("nothing was planted; what scatters is chance.");
        assertThat(EventThread.comes(() -> window.current().name().equals("trials")))
                .isTrue();
    }

    private List<JudgedTrial> trialsNow() {
        return window.desk().evidence().orElseThrow().determinations().stream()
                .flatMap(determination -> determination.trials().stream())
                .toList();
    }

    @Test
    void whatWasPlantedIsToldAfterwardsWithItsTrial() throws Exception {
        beginTraining();
        // The kinds stand in the order: chance, nothing, leak, line, foam, soak.
        simulate(4);
        assertThat(EventThread.comes(() -> !trialsNow().isEmpty())).isTrue();
        long seed = PracticeRun.seedOf(trials().get(0).trial().value().id()).orElseThrow();
        String wrong = PracticeRun.ofSeed(seed)
                .orElseThrow()
                .planted(MIX)
                .trials()
                .get(0)
                .text();
        assertThat(planted())
                .startsWith("In practice the true factor of HG-101 is ")
                .endsWith("planted was \"foam left under the cover\", in " + wrong + ".");
        assertThat(trials())
                .allSatisfy(trial -> assertThat(trial.trial().value().remarks())
                        .isEqualTo("SIMULATED for practice (seed " + seed + "); nothing was measured"));
    }

    @Test
    void aSecondRunOfTheSameMomentGetsTrialsOfItsOwn() throws Exception {
        beginTraining();
        simulate(1);
        assertThat(EventThread.comes(() -> trialsNow().size() == 6)).isTrue();
        simulate(1);
        assertThat(EventThread.comes(() -> trialsNow().size() == 12)).isTrue();
    }

    @Test
    void takenBackNothingIsSimulated() throws Exception {
        beginTraining();
        focusOnTheMixes();
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_T);
        JDialog dialog = asked();
        new Keys().strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> !dialog.isShowing())).isTrue();
        assertThat(EventThread.call(this::trialsNow)).isEmpty();
        assertThat(planted()).isEqualTo("HG-101 has no simulated trials yet.");
    }
}
