package porebench.desk.manual;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The pages of the manual in one language, in the order of its contents.
 *
 * <p>A page that is not there in a language is shown in English and says so. The folder of a language and a country, such as
 * {@code es-ES}, is looked into before that of the language, {@code es}.
 */
public final class Manual {
    /** Where the pages stand in the jar. */
    static final String FOLDER = "/porebench/manual/";

    private static final Pattern PAGE_LINK = Pattern.compile("\\]\\(([a-z0-9-]+)\\.md\\)");
    private static final String PROBLEMS = "<!-- problems -->";
    private static final String TERMS = "<!-- terms -->";

    /** A page of another language lies a folder deeper than the English one, but is shown from the same place. */
    private static final String UP_TWICE = "](../../";

    private static final String UP_ONCE = "](../";

    private final Map<String, ManualPage> pages = new LinkedHashMap<>();

    private Manual(Locale locale) {
        ManualPage contents = page(ManualPage.CONTENTS, locale);
        pages.put(contents.name(), contents);
        Matcher links = PAGE_LINK.matcher(contents.markdown());
        // A page is listed where it is named first.
        Set<String> named = new TreeSet<>();
        while (links.find()) {
            String name = links.group(1);
            if (named.add(name)) {
                pages.put(name, page(name, locale));
            }
        }
    }

    /** Reads the manual; not on the event thread. */
    public static Manual read(Locale locale) {
        return new Manual(locale);
    }

    /** Returns all pages, the contents first. */
    public List<ManualPage> pages() {
        return List.copyOf(pages.values());
    }

    /** Returns a page. */
    public Optional<ManualPage> named(String name) {
        return Optional.ofNullable(pages.get(name));
    }

    private static ManualPage page(String name, Locale locale) {
        for (String folder : folders(locale)) {
            Optional<String> text = text(FOLDER + folder + name + ".md");
            if (text.isPresent()) {
                boolean isTranslated = !folder.isEmpty() || locale.getLanguage().equals("en");
                String here = folder.isEmpty() ? text.get() : text.get().replace(UP_TWICE, UP_ONCE);
                ManualPage page = ManualPage.of(name, filled(here, locale), isTranslated);
                return folder.isEmpty() ? page : page.linkedAs(page(name, Locale.ENGLISH));
            }
        }
        throw new IllegalStateException("the program lacks page " + name + " of its manual");
    }

    /** Returns the folders a page may stand in, the nearest language first; that of English has no name. */
    static List<String> folders(Locale locale) {
        List<String> folders = new ArrayList<>();
        if (!locale.getLanguage().isEmpty() && !locale.getLanguage().equals("en")) {
            if (!locale.getCountry().isEmpty()) {
                folders.add(locale.getLanguage() + "-" + locale.getCountry() + "/");
            }
            folders.add(locale.getLanguage() + "/");
        }
        folders.add("");
        return folders;
    }

    /** Puts in what is made from the texts of the program. */
    private static String filled(String markdown, Locale locale) {
        String filled = TextMarks.shown(markdown, locale);
        if (filled.contains(PROBLEMS)) {
            filled = filled.replace(PROBLEMS, ProblemList.in(locale));
        }
        if (filled.contains(TERMS)) {
            filled = filled.replace(
                    TERMS,
                    text(FOLDER + "terms.csv")
                            .map(terms -> TermList.of(terms, locale))
                            .orElse(""));
        }
        return filled;
    }

    static Optional<String> text(String resource) {
        try (InputStream in = Manual.class.getResourceAsStream(resource)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException("could not read " + resource, failure);
        }
    }
}
