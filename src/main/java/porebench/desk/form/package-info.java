/**
 * What forms are made of: drafts of columns with undo, typed numbers, units at the edge, fields with their problems under them.
 *
 * <p>Imported by the screens of {@code desk}; knows none of them.
 */
@NullMarked
package porebench.desk.form;

import org.jspecify.annotations.NullMarked;
