/**
 * Uncertainty put together from its parts, by propagation and by drawing.
 */
@NullMarked
package porebench.statistics.uncertainty;

import org.jspecify.annotations.NullMarked;
