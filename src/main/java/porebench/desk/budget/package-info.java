/**
 * The section that says how uncertain a factor and a field reading are, and from what.
 *
 * <p>Imports {@code desk}, {@code desk.form} and {@code desk.table}, {@code chart} and below; {@code desk.frame} places it.
 */
@NullMarked
package porebench.desk.budget;

import org.jspecify.annotations.NullMarked;
