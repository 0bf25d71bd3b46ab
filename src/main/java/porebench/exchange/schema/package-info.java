/**
 * What programs are told of the CSV files: a table schema of each, made of the columns of the records and of the words that
 * {@code docs/formats.md} has for them; and one of each list that is written, each table of numbers that is read, and each table of a
 * whole export.
 *
 * <p>Imports {@code exchange.sheet}, {@code exchange.text} and {@code record}. {@code exchange} may import it.
 */
@NullMarked
package porebench.exchange.schema;

import org.jspecify.annotations.NullMarked;
