/**
 * What all plots share: colours and shapes, points and bars, axes and legends, words and the cells of tables.
 *
 * <p>Imports {@code record} and what lies below, no other room of {@code chart}. Every other one and screens may import it.
 */
@NullMarked
package porebench.chart.look;

import org.jspecify.annotations.NullMarked;
