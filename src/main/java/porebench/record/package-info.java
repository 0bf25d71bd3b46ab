/**
 * What a laboratory keeps: one class a kind of record.
 *
 * <p>Imports {@code method}, {@code statistics} and {@code quantity}. Knows nothing of files, databases, paper or windows, and
 * concludes nothing: what follows from the records stands in {@code evidence}.
 */
@NullMarked
package porebench.record;

import org.jspecify.annotations.NullMarked;
