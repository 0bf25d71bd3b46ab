package porebench.command;

import java.util.Collections;
import java.util.Enumeration;
import java.util.Locale;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import porebench.method.Texts;

/** The texts of {@code --help}, written as picocli wants them: a percent sign twice, {@code %n} a new line. */
final class HelpTexts extends ResourceBundle {
    private final Texts texts;

    HelpTexts(Locale locale) {
        this.texts = Texts.of("porebench.command.help", locale);
    }

    @Override
    protected @Nullable Object handleGetObject(String key) {
        return texts.keys().contains(key) ? texts.plain(key) : null;
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(texts.keys());
    }
}
