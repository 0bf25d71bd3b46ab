package porebench.record;

import java.util.Locale;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.quantity.Symbolic;

/**
 * Who holds a factor card.
 *
 * @param kind what holds it
 * @param name its name, as the laboratory says it: {@code 12} of truck 12
 */
public record CardHolder(Kind kind, String name) {
    /** What can hold a card. */
    public enum Kind implements Symbolic {
        TRUCK,
        CREW,
        PLANT,
        PERSON;
    }

    public CardHolder {
        name = Require.notBlank("name", name).strip();
    }

    /** Returns the holder that a text names, such as {@code truck 12}; empty where it does not begin with a kind and a name follows. */
    public static Optional<CardHolder> parse(String text) {
        String[] parts = text.strip().split("\\s+", 2);
        if (parts.length < 2) {
            return Optional.empty();
        }
        String word = parts[0].toLowerCase(Locale.ROOT);
        for (Kind kind : Kind.values()) {
            if (kind.symbol().equals(word)) {
                return Optional.of(new CardHolder(kind, parts[1]));
            }
        }
        return Optional.empty();
    }

    /** Returns kind and name, as {@link #parse} reads them. */
    public String text() {
        return kind.symbol() + " " + name;
    }
}
