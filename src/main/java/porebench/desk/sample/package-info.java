/**
 * The correction sample page: what to weigh and to pour for the selected mix and a bowl, and the trial sheet.
 *
 * <p>Imports {@code desk}, {@code desk.form}, {@code desk.table} and what lies below them; only the frame imports it.
 */
@NullMarked
package porebench.desk.sample;

import org.jspecify.annotations.NullMarked;
