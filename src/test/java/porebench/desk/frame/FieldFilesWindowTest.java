package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.ScriptedAsker;
import porebench.record.id.MixId;

/** A crew's phone page and field sheet, saved from the page of a factor in the real window. */
@NeedsDisplay
class FieldFilesWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;

    @BeforeEach
    void openTheFactor() throws Exception {
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(null);
    }

    @AfterEach
    void closeWindow() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private JButton button(String name) {
        return Named.in(window.current().component(), JButton.class, name);
    }

    /** The window is closed only when what left is on view: a reading under way would find the lab book closed. */
    private void isSaid(String words) throws Exception {
        assertThat(EventThread.comes(() -> Named.in(window.current().component(), JLabel.class, "factor.printed")
                        .getText()
                        .contains(words)))
                .isTrue();
    }

    private void press(String mix, String name) throws Exception {
        EventThread.run(() -> window.openMix(new MixId(mix)));
        EventThread.run(() -> window.turnTo(window.pages().named("factor").orElseThrow()));
        assertThat(EventThread.comes(() -> button(name).isEnabled())).isTrue();
        EventThread.run(() -> button(name).doClick());
    }

    @Test
    void bothAreSavedWhereThePersonSays() throws Exception {
        Path page = folder.resolve("page.html");
        asker.filesToWrite.add(page);
        press("HG-101", "factor.phonePage");
        assertThat(EventThread.comes(() -> Files.exists(page))).isTrue();
        assertThat(Files.readString(page)).contains("default-src 'none'", "HG-101");
        Path sheet = folder.resolve("sheet.pdf");
        asker.filesToWrite.add(sheet);
        press("HG-101", "factor.fieldSheet");
        assertThat(EventThread.comes(() -> Files.exists(sheet))).isTrue();
        assertThat(Files.readAllBytes(sheet)).startsWith('%', 'P', 'D', 'F');
        isSaid("saved as a file: 2");
        assertThat(asker.asked).containsSequence(List.of("Phone page...")).contains("Field sheet...");
    }

    @Test
    void ofALapsedFactorNothingLeavesButAMarkedCopy() throws Exception {
        Path page = folder.resolve("page.html");
        asker.confirmations.add(false);
        press("HG-103", "factor.phonePage");
        // The page is read again before anything is asked: a second press before that would take the first one's place.
        assertThat(EventThread.comes(() -> asker.asked.size() == 1)).isTrue();
        assertThat(Files.exists(page)).isFalse();
        asker.confirmations.add(true);
        asker.filesToWrite.add(page);
        press("HG-103", "factor.phonePage");
        assertThat(EventThread.comes(() -> Files.exists(page))).isTrue();
        assertThat(Files.readString(page)).contains("\"state\":\"lapsed\"");
        isSaid("marked copies: 1");
    }
}
