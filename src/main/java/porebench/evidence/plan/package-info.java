/**
 * The tests of a week: which mixes, how many trials, what to fetch of each source, and on which meter.
 *
 * <p>Imports {@code evidence} and below; imported by {@code command}, {@code desk}, {@code port} and {@code print}.
 */
@NullMarked
package porebench.evidence.plan;

import org.jspecify.annotations.NullMarked;
