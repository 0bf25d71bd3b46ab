/**
 * The statistics of repeat measurements: summaries, intervals, range checks, outlier tests and uncertainty.
 *
 * <p>Plain numbers go in and plain numbers come out; what they measure is the caller's business. Imports
 * {@code porebench.quantity} only, and is the one package that may import Commons Math. A quantity that a set of
 * numbers does not define (the spread of one reading) is an empty optional, never 0 and never NaN.
 *
 * <p>One room a question: {@code distribution}, {@code summary}, {@code outlier}, {@code control}, {@code variance},
 * {@code comparison}, {@code uncertainty}. Here stands what they share.
 */
@NullMarked
package porebench.statistics;

import org.jspecify.annotations.NullMarked;
