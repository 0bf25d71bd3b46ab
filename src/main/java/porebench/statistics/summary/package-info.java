/**
 * What some values say: mean, scatter, range, their intervals, and whether they look normal.
 */
@NullMarked
package porebench.statistics.summary;

import org.jspecify.annotations.NullMarked;
