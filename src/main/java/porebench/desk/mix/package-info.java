/**
 * The mix design page: the draft of a mix design, its table of constituents, and how it is saved.
 *
 * <p>Imports {@code desk}, {@code desk.form}, {@code desk.table} and what lies below them; only the frame imports it.
 */
@NullMarked
package porebench.desk.mix;

import org.jspecify.annotations.NullMarked;
