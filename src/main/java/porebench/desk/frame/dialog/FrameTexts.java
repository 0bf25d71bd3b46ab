package porebench.desk.frame.dialog;

import java.util.Locale;
import porebench.method.Texts;

/** Where the words of the window itself stand. */
public final class FrameTexts {
    private FrameTexts() {}

    public static Texts in(Locale locale) {
        return Texts.of("porebench.desk.frame.frame", locale);
    }
}
