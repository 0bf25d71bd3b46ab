/**
 * Plots of a study between laboratories: h and k, readings by sample, shares of the scatter.
 *
 * <p>Imports {@code chart.look}, {@code record} and what lies below. {@code chart} and screens may import it.
 */
@NullMarked
package porebench.chart.study;

import org.jspecify.annotations.NullMarked;
