/**
 * Control charts: their limits, their signals, how often they cry wolf, and drift.
 */
@NullMarked
package porebench.statistics.control;

import org.jspecify.annotations.NullMarked;
