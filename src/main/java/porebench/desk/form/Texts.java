package porebench.desk.form;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import porebench.method.FixedNumbers;

/** The words of one bundle in one language; a key that is not there is a fault of the program. */
public final class Texts {
    private final ResourceBundle bundle;
    private final Locale locale;

    private Texts(ResourceBundle bundle, Locale locale) {
        this.bundle = bundle;
        this.locale = locale;
    }

    /**
     * Returns the words of a bundle.
     *
     * @param baseName the bundle, such as {@code porebench.desk.trial.trial}
     * @param locale the language; English where there is no translation
     */
    public static Texts of(String baseName, Locale locale) {
        return new Texts(
                ResourceBundle.getBundle(
                        baseName,
                        locale,
                        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)),
                locale);
    }

    /** Returns a text, its values put in; values are texts, numbers are made texts before. An apostrophe stands there twice. */
    public String get(String key, Object... values) {
        // Also without values, so that an apostrophe is written twice in every text alike.
        return new MessageFormat(FixedNumbers.in(locale, bundle.getString(key)), locale).format(values);
    }

    /** Returns the language. */
    public Locale locale() {
        return locale;
    }
}
