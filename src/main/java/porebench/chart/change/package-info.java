/**
 * Plots of a change: the difference it made, and what an error of the factor does to loads.
 *
 * <p>Imports {@code chart.look} and what lies below. {@code chart} and screens may import it.
 */
@NullMarked
package porebench.chart.change;

import org.jspecify.annotations.NullMarked;
