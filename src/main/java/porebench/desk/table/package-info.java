/**
 * The tables of all pages: stated columns, rows to read, to sort, to copy and to type in, and the versions of a record.
 *
 * <p>Stands on {@code desk.form}; imported by the screens of {@code desk}, and knows none of them.
 */
@NullMarked
package porebench.desk.table;

import org.jspecify.annotations.NullMarked;
