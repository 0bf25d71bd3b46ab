/**
 * The first steps of a lab book: what a laboratory enters before its first factor, in the order that leads there.
 *
 * <p>Imported by {@code desk.frame} only.
 */
@NullMarked
package porebench.desk.frame.start;

import org.jspecify.annotations.NullMarked;
