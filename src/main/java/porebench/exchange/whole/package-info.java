/**
 * A whole lab book as a folder of tables, each row as it stands in the chain, and what reads it again.
 *
 * <p>Imports {@code exchange.photo}, {@code exchange.text}, {@code port}, {@code record} and what lies below. {@code exchange} alone may import it.
 */
@NullMarked
package porebench.exchange.whole;

import org.jspecify.annotations.NullMarked;
