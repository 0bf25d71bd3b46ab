/**
 * What stands beside and above every page: the list of mixes, and the head that names the selected mix and what is next.
 *
 * <p>Imports {@code desk} and {@code desk.form}; imported by {@code desk.frame} only.
 */
@NullMarked
package porebench.desk.frame.rail;

import org.jspecify.annotations.NullMarked;
