package porebench.command.reply;

import java.text.MessageFormat;
import java.util.Enumeration;
import java.util.Locale;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import porebench.method.FixedNumbers;

/** The words of the command line's answers, from the bundle {@code porebench.command.command}. */
public final class Words {
    private static final ResourceBundle.Control WITHOUT_FALLBACK =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final ResourceBundle bundle;
    private final Locale locale;

    private Words(Locale locale) {
        this.locale = locale;
        this.bundle = bundle("porebench.command.command", locale);
    }

    public static Words in(Locale locale) {
        return new Words(locale);
    }

    /** Returns the texts of {@code --help}, written as picocli wants them: a percent sign twice, {@code %n} a new line. */
    public static ResourceBundle help(Locale locale) {
        ResourceBundle help = bundle("porebench.command.help", locale);
        return new ResourceBundle() {
            @Override
            protected @Nullable Object handleGetObject(String key) {
                return help.containsKey(key) ? FixedNumbers.in(locale, help.getString(key)) : null;
            }

            @Override
            public Enumeration<String> getKeys() {
                return help.getKeys();
            }
        };
    }

    private static ResourceBundle bundle(String name, Locale locale) {
        return ResourceBundle.getBundle(name, locale, WITHOUT_FALLBACK);
    }

    /** Returns a text with its values put in; numbers come already written. */
    public String say(String key, String... values) {
        return new MessageFormat(FixedNumbers.in(locale, bundle.getString(key)), locale).format((Object[]) values);
    }
}
