/**
 * The sheet of calibrations of meters, whose forms each have columns of their own.
 *
 * <p>Imports {@code exchange.sheet}, {@code exchange.text}, {@code record} and what lies below. {@code exchange} alone may
 * import it.
 */
@NullMarked
package porebench.exchange.calibration;

import org.jspecify.annotations.NullMarked;
