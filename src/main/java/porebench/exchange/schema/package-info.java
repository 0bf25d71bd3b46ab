/**
 * What programs are told of the CSV files: a table schema of each, made of the columns of the records and of the words that
 * {@code docs/formats.md} has for them.
 *
 * <p>Imports {@code exchange.sheet}, {@code exchange.text} and {@code record}. {@code exchange} may import it.
 */
@NullMarked
package porebench.exchange.schema;

import org.jspecify.annotations.NullMarked;
