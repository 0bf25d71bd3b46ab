/**
 * The control chart of a laboratory's factors and its table.
 *
 * <p>Imports {@code chart.look}, {@code record} and what lies below. {@code chart} and screens may import it.
 */
@NullMarked
package porebench.chart.control;

import org.jspecify.annotations.NullMarked;
