/**
 * Photos of signed sheets as files: read, found beside the rows that name them, and written.
 *
 * <p>Imports {@code exchange.text}, {@code port}, {@code evidence}, {@code record} and what lies below. {@code exchange.whole} and
 * {@code exchange} may import it.
 */
@NullMarked
package porebench.exchange.photo;

import org.jspecify.annotations.NullMarked;
