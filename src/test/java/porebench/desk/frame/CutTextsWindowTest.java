package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.desk.EventThread;
import porebench.desk.NeedsDisplay;
import porebench.record.id.MixId;

/** On a small screen no label and no button of a page ends in dots, in the languages with the longest words. */
@NeedsDisplay
class CutTextsWindowTest {
    private static final Dimension SMALL_SCREEN = new Dimension(1366, 768);
    private static final MixId MIX = new MixId("HG-101");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"es-ES", "fr", "de"})
    void noWordsAreCutOff(String language) throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        DemoDesk demo = EventThread.call(() -> DemoDesk.filled(folder, Locale.forLanguageTag(language)));
        demo.memory.remember(SMALL_SCREEN);
        WorkbenchFrame window = EventThread.call(() -> demo.open());
        try {
            assertThat(CutTexts.in(window, MIX)).isEmpty();
        } finally {
            EventThread.run(window::close);
        }
    }
}
