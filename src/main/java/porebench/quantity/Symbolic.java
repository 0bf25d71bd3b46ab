package porebench.quantity;

import java.util.Locale;

/**
 * A constant that is known outside the program by its own name: {@code LEAST_BOWL} is {@code least-bowl} in files, in the lab book,
 * on the command line and in the keys of texts. To rename it is to change all of those.
 */
public interface Symbolic {
    /** Returns the name of the constant. */
    String name();

    /** Returns the word by which data knows the constant: its name in small letters, with hyphens. */
    default String symbol() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
