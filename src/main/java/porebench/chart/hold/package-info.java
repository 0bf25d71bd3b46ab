/**
 * Whether a factor still holds, as differences, sums and averages below one another.
 *
 * <p>Imported by {@code desk}.
 */
@NullMarked
package porebench.chart.hold;

import org.jspecify.annotations.NullMarked;
