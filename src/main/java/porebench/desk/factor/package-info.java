/**
 * The page on which a factor is issued, replaced and withdrawn, and its card seen and printed.
 *
 * <p>Imports {@code desk}, {@code desk.form} and {@code desk.table}; no screen sees another.
 */
@NullMarked
package porebench.desk.factor;

import org.jspecify.annotations.NullMarked;
