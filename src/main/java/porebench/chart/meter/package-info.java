/**
 * Plots of a meter: its dial, its bowl, and readings by elevation.
 *
 * <p>Imports {@code chart.look}, {@code record} and what lies below. {@code chart} and screens may import it.
 */
@NullMarked
package porebench.chart.meter;

import org.jspecify.annotations.NullMarked;
