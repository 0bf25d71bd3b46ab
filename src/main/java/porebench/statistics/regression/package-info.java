/**
 * Least squares: what of each of some columns makes up some values, freely or with no share below 0.
 *
 * <p>May import Commons Math and {@code porebench.quantity}.
 */
@NullMarked
package porebench.statistics.regression;

import org.jspecify.annotations.NullMarked;
