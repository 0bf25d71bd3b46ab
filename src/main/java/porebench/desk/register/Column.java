package porebench.desk.register;

import java.util.function.Function;

/**
 * A column of a register.
 *
 * @param heading its heading
 * @param width its width at 100 %, in pixels
 * @param words what it says of a record
 * @param <T> the kind of record
 */
record Column<T>(String heading, int width, Function<T, String> words) {}
