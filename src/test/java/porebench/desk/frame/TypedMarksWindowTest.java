package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javax.swing.AbstractButton;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Page;
import porebench.record.id.MixId;

/** The title of the window and its buttons say where something is typed and not saved. */
@NeedsDisplay
class TypedMarksWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private WorkbenchFrame window;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        window = EventThread.call(() -> DemoDesk.filled(folder).open());
        EventThread.run(() -> window.openMix(new MixId("HG-108")));
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> window.pages().all().forEach(Page::dropDraft));
        EventThread.run(window::close);
    }

    private String spoken(String button) throws Exception {
        return EventThread.call(() -> Named.in(window.content(), AbstractButton.class, button)
                .getAccessibleContext()
                .getAccessibleName());
    }

    private String title() throws Exception {
        return EventThread.call(() -> window.frame().getTitle());
    }

    @Test
    void aTypedLetterMarksItsPageAndDroppingItTakesTheMarkAway() throws Exception {
        String before = title();
        assertThat(before).doesNotContain("not saved");
        Page mix = EventThread.call(() -> window.pages().named("mix").orElseThrow());
        EventThread.run(() -> window.turnTo(mix));
        EventThread.run(
                () -> Named.in(mix.component(), JTextField.class, "title").setText("typed"));
        assertThat(EventThread.comes(() -> window.frame().getTitle().equals(before + " · not saved: Mix design")))
                .as(title())
                .isTrue();
        assertThat(spoken("step.mix")).isEqualTo("1 Mix design, typing begun");
        assertThat(spoken("step.trials")).isEqualTo("3 Trials");
        assertThat(EventThread.call(() -> window.frame().getRootPane().getClientProperty("Window.documentModified")))
                .isEqualTo(true);
        EventThread.run(mix::dropDraft);
        assertThat(EventThread.comes(() -> window.frame().getTitle().equals(before)))
                .isTrue();
        assertThat(spoken("step.mix")).isEqualTo("1 Mix design");
    }

    @Test
    void aRegisterIsMarkedInTheRail() throws Exception {
        Page sources = EventThread.call(() -> window.pages().named("sources").orElseThrow());
        EventThread.run(() -> window.turnTo(sources));
        EventThread.run(
                () -> Named.in(sources.component(), JTextField.class, "ledge").setText("bench 9"));
        assertThat(EventThread.comes(() -> window.frame().getTitle().endsWith("not saved: Sources")))
                .as(title())
                .isTrue();
        assertThat(spoken("register.sources")).isEqualTo("Sources, typing begun");
        assertThat(spoken("register.meters")).isEqualTo("Meters");
    }
}
