/**
 * Where scatter comes from: analyses of variance, gauge studies and variances by restricted likelihood.
 */
@NullMarked
package porebench.statistics.variance;

import org.jspecify.annotations.NullMarked;
