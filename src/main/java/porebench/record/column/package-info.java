/**
 * The columns of each kind of record, stated once: name, type, units, bounds, since when, and where in the record the value is.
 *
 * <p>The lab book's tables and the text that is hashed, the headings and cells of files and the forms of the window follow
 * from them. To add a field: the record, its column here, a schema step.
 */
@NullMarked
package porebench.record.column;

import org.jspecify.annotations.NullMarked;
