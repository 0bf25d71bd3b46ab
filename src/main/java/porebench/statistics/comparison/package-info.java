/**
 * Comparing the scatter and the level of meters, operators and laboratories.
 */
@NullMarked
package porebench.statistics.comparison;

import org.jspecify.annotations.NullMarked;
