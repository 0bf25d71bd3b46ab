/**
 * Plots of one mix: the factor by trial and over time, and the parts of its uncertainty.
 *
 * <p>Imports {@code chart.look}, {@code record} and what lies below. {@code chart} and screens may import it.
 */
@NullMarked
package porebench.chart.factor;

import org.jspecify.annotations.NullMarked;
