/**
 * Distributions: their shares and their points.
 */
@NullMarked
package porebench.statistics.distribution;

import org.jspecify.annotations.NullMarked;
