package porebench.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import porebench.desk.form.Numbers;
import porebench.desk.form.Respelling;
import porebench.port.DraftStore;

/**
 * What was typed for the open lab book and is not saved yet: one text a name, such as {@code trial/HG-101}. It outlives the
 * page, the selected mix and the program. Used on one thread, apart from {@link #read}.
 *
 * <p>What is kept outlives the language of the window too, in which its numbers were typed: that is kept in a line {@code ~} and
 * its tag before the text.
 */
public final class Unsaved {
    private static final String LANGUAGE = "~";

    private final Locale locale;
    private final List<Runnable> listeners = new ArrayList<>();
    private DraftStore store = DraftStore.none();
    private String place = "";
    private SortedMap<String, Typed> texts = new TreeMap<>();

    /** What was typed, and in which language. */
    private record Typed(String text, Locale locale) {
        static Typed parse(String kept, Locale otherwise) {
            int end = kept.indexOf('\n');
            return kept.startsWith(LANGUAGE) && end >= 0
                    ? new Typed(kept.substring(end + 1), Locale.forLanguageTag(kept.substring(LANGUAGE.length(), end)))
                    : new Typed(kept, otherwise);
        }

        String kept() {
            return LANGUAGE + locale.toLanguageTag() + '\n' + text;
        }
    }

    /**
     * Keeps nothing yet.
     *
     * @param locale in which is typed from now on
     */
    Unsaved(Locale locale) {
        this.locale = locale;
    }

    /** Keeps what is typed from now on in a store. */
    public void keepIn(DraftStore other) {
        store = other;
    }

    /** Reads what is kept for a lab book; beside the event thread. */
    public Map<String, String> read(Path book) {
        return store.all(placeOf(book));
    }

    /**
     * Turns to a lab book, for which something was read; what is kept of the one before stays kept. Nobody is told of it here: who
     * listens hears from the desk that it turned to another lab book.
     */
    public void turnTo(Path book, Map<String, String> kept) {
        place = placeOf(book);
        texts = new TreeMap<>();
        kept.forEach((name, text) -> texts.put(name, Typed.parse(text, locale)));
    }

    /** Returns where the lab book is kept, which tells it from every other one; blank while none was turned to. */
    public String place() {
        return place;
    }

    private static String placeOf(Path book) {
        return book.toAbsolutePath().normalize().toString();
    }

    /** Returns what is kept under a name. */
    public Optional<String> find(String name) {
        return Optional.ofNullable(texts.get(name)).map(Typed::text);
    }

    /** Returns what spells something that is kept under a name as it would be typed now. */
    public Respelling respelling(String name) {
        Locale of = Optional.ofNullable(texts.get(name)).map(Typed::locale).orElse(locale);
        return new Respelling(new Numbers(of), new Numbers(locale));
    }

    /** Returns the names that something is kept under and that a word leads. */
    public List<String> names(String lead) {
        return texts.keySet().stream().filter(name -> name.startsWith(lead)).toList();
    }

    /** Keeps a text under a name, of one line; in the place of the one before. */
    public void keep(String name, String text) {
        Typed typed = new Typed(text, locale);
        if (!typed.equals(texts.put(name, typed))) {
            store.keep(place, name, Optional.of(typed.kept()));
            tell();
        }
    }

    /** Keeps nothing under a name any more. */
    public void drop(String name) {
        if (texts.remove(name) != null) {
            store.keep(place, name, Optional.empty());
            tell();
        }
    }

    /** Calls back after every change. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
