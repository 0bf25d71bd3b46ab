package porebench.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import porebench.port.DraftStore;

/**
 * What was typed for the open lab book and is not saved yet: one text a name, such as {@code trial/HG-101}. It outlives the
 * page, the selected mix and the program. Used on one thread, apart from {@link #read}.
 */
public final class Unsaved {
    private final List<Runnable> listeners = new ArrayList<>();
    private DraftStore store = DraftStore.none();
    private String place = "";
    private SortedMap<String, String> texts = new TreeMap<>();

    Unsaved() {}

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
        texts = new TreeMap<>(kept);
    }

    private static String placeOf(Path book) {
        return book.toAbsolutePath().normalize().toString();
    }

    /** Returns what is kept under a name. */
    public Optional<String> find(String name) {
        return Optional.ofNullable(texts.get(name));
    }

    /** Returns the names that something is kept under and that a word leads. */
    public List<String> names(String lead) {
        return texts.keySet().stream().filter(name -> name.startsWith(lead)).toList();
    }

    /** Keeps a text under a name, of one line; in the place of the one before. */
    public void keep(String name, String text) {
        if (!text.equals(texts.put(name, text))) {
            store.keep(place, name, Optional.of(text));
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
