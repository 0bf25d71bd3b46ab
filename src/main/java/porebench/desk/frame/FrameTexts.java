package porebench.desk.frame;

import java.util.Locale;
import porebench.method.Texts;

/** Where the words of the window itself stand. */
final class FrameTexts {
    private FrameTexts() {}

    static Texts in(Locale locale) {
        return Texts.of("porebench.desk.frame.frame", locale);
    }
}
