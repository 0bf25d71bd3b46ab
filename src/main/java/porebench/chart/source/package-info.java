/**
 * Plots of a source: what was measured of it over time, beside the figure in use.
 *
 * <p>Imports {@code chart.look}, {@code port} and what lies below. {@code chart} and screens may import it.
 */
@NullMarked
package porebench.chart.source;

import org.jspecify.annotations.NullMarked;
