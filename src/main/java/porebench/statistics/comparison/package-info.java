/**
 * Comparing the scatter and the level of meters, operators and laboratories, and what was before a change with what is after it.
 */
@NullMarked
package porebench.statistics.comparison;

import org.jspecify.annotations.NullMarked;
