/**
 * What is done with lab books as a whole: opening and turning to another, importing, backing up and replacing, training books, what
 * went wrong with one; and the guard that no call of a lab book comes on the event thread.
 *
 * <p>Imports {@code desk}, {@code desk.form} and {@code desk.frame.dialog}; imported by {@code desk.frame} only.
 */
@NullMarked
package porebench.desk.frame.book;

import org.jspecify.annotations.NullMarked;
