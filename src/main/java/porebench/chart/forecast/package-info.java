/**
 * What was forecast against what was measured.
 *
 * <p>Imports {@code chart.look} and what lies below. {@code chart} and screens may import it.
 */
@NullMarked
package porebench.chart.forecast;

import org.jspecify.annotations.NullMarked;
