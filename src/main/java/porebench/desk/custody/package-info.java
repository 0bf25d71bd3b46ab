/**
 * The factor cards that left the laboratory: who holds which, which have to come back, and what happened to them.
 *
 * <p>Imports {@code desk}, {@code desk.form} and {@code desk.table}; imported by {@code desk.frame} only.
 */
@NullMarked
package porebench.desk.custody;

import org.jspecify.annotations.NullMarked;
