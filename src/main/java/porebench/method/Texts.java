package porebench.method;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * The words of one bundle in one language, with the numbers that stand fixed in them in the reader's writing.
 *
 * <p>A caution is worded once, in {@code porebench.method.cautions}; a text takes it in by its name in brackets,
 * {@code [caution.lift]}.
 *
 * <p>This is the one place where a bundle is looked up. A key that is not there is a fault of the program.
 */
public final class Texts {
    private static final String CAUTIONS = "porebench.method.cautions";
    /** Where a text takes in a caution, such as {@code [caution.lift]}: each caution is worded once. */
    private static final Pattern CAUTION = Pattern.compile("\\[caution\\.([a-z]+(?:\\.[AB])?)]");

    private final ResourceBundle bundle;
    private final Locale words;
    private final Locale locale;
    /** Taken apart once each: a page or a card asks for the same texts again and again. */
    private final Map<String, String> plain = new ConcurrentHashMap<>();

    private final Map<String, TextPattern> patterns = new ConcurrentHashMap<>();

    private Texts(ResourceBundle bundle, Locale words, Locale locale) {
        this.bundle = bundle;
        this.words = words;
        this.locale = locale;
    }

    /**
     * Returns the words of a bundle.
     *
     * @param baseName the bundle, such as {@code porebench.desk.trial.trial}
     * @param locale the language; English where there is no translation
     */
    public static Texts of(String baseName, Locale locale) {
        return of(baseName, locale, locale);
    }

    /**
     * Returns the words of a bundle in one language with the numbers in the manner of another.
     *
     * @param baseName the bundle
     * @param words the language of the words
     * @param locale the manner of the numbers
     */
    public static Texts of(String baseName, Locale words, Locale locale) {
        return new Texts(
                ResourceBundle.getBundle(
                        baseName,
                        words,
                        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)),
                words,
                locale);
    }

    /** Returns a text, its values put in; values are texts, numbers are made texts before. An apostrophe stands there twice. */
    public String get(String key, Object... values) {
        // Also without values, so that an apostrophe is written twice in every text alike.
        return fill(plain(key), values);
    }

    /** Returns a pattern of this language with its values put in. */
    String fill(String pattern, Object... values) {
        return patterns.computeIfAbsent(pattern, TextPattern::of)
                .fill(values)
                .orElseGet(() -> new MessageFormat(pattern, locale).format(values));
    }

    /** Returns a text that has no places for values, its apostrophes and braces as they stand. */
    public String plain(String key) {
        return plain.computeIfAbsent(key, name -> written(bundle.getString(name)));
    }

    private String written(String text) {
        String numbered = FixedNumbers.in(locale, withCautions(text));
        return bundle.getLocale().getLanguage().equals("fr") ? FrenchSpaces.in(numbered) : numbered;
    }

    private String withCautions(String text) {
        return text.contains("[caution.")
                ? CAUTION.matcher(text)
                        .replaceAll(caution -> of(CAUTIONS, words, locale).plain(caution.group(1)))
                : text;
    }

    /** Returns the keys of all texts. */
    public Set<String> keys() {
        return bundle.keySet();
    }

    /** Returns a text that need not be there. */
    public Optional<String> find(String key) {
        return bundle.containsKey(key) ? Optional.of(get(key)) : Optional.empty();
    }

    /** Returns the locale asked for, whose numbers are written. */
    public Locale locale() {
        return locale;
    }
}
