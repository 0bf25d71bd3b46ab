/**
 * The page of what crews read at the loads: readings of the whole laboratory, what is made of each, and the form for one.
 *
 * <p>Imports {@code desk}, {@code desk.form}, {@code desk.table} and what lies below. Only {@code desk.frame} may import it.
 */
@NullMarked
package porebench.desk.field;

import org.jspecify.annotations.NullMarked;
