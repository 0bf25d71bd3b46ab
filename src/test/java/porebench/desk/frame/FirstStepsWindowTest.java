package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JTextField;
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
import porebench.method.MeterType;
import porebench.record.Laboratory;
import porebench.record.Samples;
import porebench.record.book.Draft;

/** An empty lab book leads through its first steps. */
@NeedsDisplay
class FirstStepsWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;

    @BeforeEach
    void openAnEmptyBook() throws Exception {
        started = new StartedWindow(folder, asker);
        window = started.window();
        asker.newFiles.add(folder.resolve("own.porebench"));
        EventThread.run(() -> window.turning().begin());
        assertThat(EventThread.comes(
                        () -> window.desk().hasBook() && named("welcome").isShowing()))
                .isTrue();
    }

    @AfterEach
    void closeWindow() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private Component named(String name) {
        return Named.in(window.content(), Component.class, name);
    }

    private String mark(String step) {
        return ((JLabel) named("welcome." + step + ".mark")).getText();
    }

    private void strike(String button) throws Exception {
        boolean there = false;
        for (int round = 0; round < 20 && !there; round++) {
            EventThread.run(() -> {
                window.frame().toFront();
                named(button).requestFocus();
            });
            there = EventThread.comesWithin(1, () -> named(button).isFocusOwner());
        }
        assertThat(there).as("the keyboard is on " + button).isTrue();
        new Keys().strike(KeyEvent.VK_SPACE);
    }

    @Test
    void whatIsEnteredIsTickedAndTheNextStepIsNamed() throws Exception {
        EventThread.run(() -> {
            assertThat(mark("laboratory")).isEqualTo("○");
            assertThat(named("welcome.calibration").isEnabled()).isFalse();
            assertThat(named("welcome.trial").isEnabled()).isFalse();
            assertThat(named("firstSteps").isShowing()).isFalse();
            window.desk().setPerson("R. Vale");
            window.desk()
                    .keep(
                            List.of(
                                    Draft.of(new Laboratory("Quarry Lane Laboratory", "", false)),
                                    Draft.of(Samples.meter("B-1", MeterType.B))),
                            "entered",
                            refused -> {});
        });
        assertThat(EventThread.comes(
                        () -> mark("laboratory").equals("✔") && mark("meter").equals("✔")))
                .isTrue();
        EventThread.run(() -> {
            assertThat(mark("calibration")).isEqualTo("○");
            assertThat(named("welcome.calibration").isEnabled()).isTrue();
        });
    }

    @Test
    void eachStepLeadsToItsPageAndABarLeadsBack() throws Exception {
        strike("welcome.meter");
        assertThat(EventThread.comes(() -> window.current().name().equals("meters")))
                .isTrue();
        EventThread.run(() -> assertThat(named("firstSteps").isShowing()).isTrue());
        assertThat(EventThread.comes(() -> named("meter.record").isShowing()
                        && Named.in(window.current().component(), JTextField.class, "id")
                                .isFocusOwner()))
                .as("the keyboard is where the meter is named")
                .isTrue();
        strike("firstSteps.list");
        assertThat(EventThread.comes(() -> named("welcome").isShowing())).isTrue();
        strike("welcome.sources");
        assertThat(EventThread.comes(() -> window.current().name().equals("sources")))
                .isTrue();
        strike("firstSteps.list");
        assertThat(EventThread.comes(() -> named("welcome").isShowing())).isTrue();
        strike("welcome.newMix");
        assertThat(EventThread.comes(() -> window.current().name().equals("mix")))
                .isTrue();
    }

    @Test
    void aListPutAwayStaysAwayAndComesBackByHelp() throws Exception {
        strike("welcome.away");
        assertThat(EventThread.comes(() -> !window.memory()
                        .settings()
                        .get("firstSteps.putAway", "")
                        .isBlank()))
                .isTrue();
        strike("register.sources");
        assertThat(EventThread.comes(() -> window.current().name().equals("sources")))
                .isTrue();
        EventThread.run(() -> {
            assertThat(named("firstSteps").isShowing()).isFalse();
            JMenuBar bar = window.frame().getJMenuBar();
            Named.in(bar.getMenu(bar.getMenuCount() - 1).getPopupMenu(), JMenuItem.class, "menu.first-steps")
                    .doClick(0);
        });
        assertThat(EventThread.comes(() -> named("welcome").isShowing())).isTrue();
        strike("register.sources");
        assertThat(EventThread.comes(() -> named("firstSteps").isShowing())).isTrue();
    }

    @Test
    void onlyTheDemoIsMarkedAsInventedAndOnEveryPage() throws Exception {
        EventThread.run(() -> assertThat(named("demo").isShowing()).isFalse());
        EventThread.run(() -> window.turning().openDemo());
        assertThat(EventThread.comes(() -> named("demo").isShowing())).isTrue();
        assertThat(EventThread.call(() -> window.current().name()))
                .as("a lab book that has its mixes opens on one of them")
                .isEqualTo("mix");
        for (LatePage<?> page : window.pages().all()) {
            EventThread.run(() -> {
                window.turnTo(page);
                assertThat(named("demo").isShowing()).as(page.name()).isTrue();
                assertThat(((JLabel) named("demo.word")).getText()).isEqualTo("DEMO");
            });
        }
        EventThread.run(
                () -> assertThat(((JButton) named("newMix")).isShowing()).isTrue());
    }
}
