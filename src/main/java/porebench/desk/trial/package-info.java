/**
 * The Trials page: the trials of a determination, what is doubtful about each, their entry, correction and import.
 *
 * <p>Imports {@code desk}, {@code desk.form}, {@code desk.table} and, for the shapes of states, {@code chart}; no other screen.
 */
@NullMarked
package porebench.desk.trial;

import org.jspecify.annotations.NullMarked;
