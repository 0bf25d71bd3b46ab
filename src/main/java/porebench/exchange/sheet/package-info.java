/**
 * The sheets: how a record of each kind stands in the rows of its file.
 *
 * <p>Imports {@code exchange.text}, {@code evidence}, {@code record} and what lies below. {@code exchange.calibration} and
 * {@code exchange} may import it.
 */
@NullMarked
package porebench.exchange.sheet;

import org.jspecify.annotations.NullMarked;
