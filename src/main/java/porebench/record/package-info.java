/**
 * What a laboratory keeps, the lab book that keeps it, and what follows from it: evidence, states, factor cards.
 *
 * <p>Imports {@code method}, {@code statistics} and {@code quantity}. Knows nothing of files, databases, paper or windows:
 * those are reached through the interfaces in {@code record.port}.
 */
@NullMarked
package porebench.record;

import org.jspecify.annotations.NullMarked;
