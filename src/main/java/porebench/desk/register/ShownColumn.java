package porebench.desk.register;

import java.util.Optional;
import java.util.function.Function;
import javax.swing.Icon;

/**
 * A column of a register.
 *
 * @param heading its heading
 * @param width its width at 100 %, in pixels
 * @param words what it says of a record
 * @param mark the shape before the words; empty for words alone
 * @param <T> the kind of record
 */
record ShownColumn<T>(String heading, int width, Function<T, String> words, Optional<Function<T, Icon>> mark) {
    ShownColumn(String heading, int width, Function<T, String> words) {
        this(heading, width, words, Optional.empty());
    }
}
