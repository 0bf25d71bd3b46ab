/**
 * The bench view: one bowl at a time and one step at a time, in digits that are read from two metres, worked by the keypad alone.
 * What is typed passes the gate of the Trials page. Only {@code porebench.desk.frame} opens it.
 */
@NullMarked
package porebench.desk.bench;

import org.jspecify.annotations.NullMarked;
