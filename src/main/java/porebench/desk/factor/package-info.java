/**
 * The page on which a factor is issued, replaced and withdrawn, and its card seen and printed.
 *
 * <p>Imports {@code desk} and {@code desk.form}; no screen sees another.
 */
@NullMarked
package porebench.desk.factor;

import org.jspecify.annotations.NullMarked;
