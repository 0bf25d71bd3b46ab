/**
 * Whether a value, or a set of values, lies too far from the others.
 */
@NullMarked
package porebench.statistics.outlier;

import org.jspecify.annotations.NullMarked;
