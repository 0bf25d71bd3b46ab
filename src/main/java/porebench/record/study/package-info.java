/**
 * Readings laid out for a study: by operator and sample, or in layers of groups within groups.
 *
 * <p>Rows of a sheet or trials of a lab book go in; what statistics can take comes out, or everything that is missing, named.
 * Used by {@code desk} and {@code command}.
 */
@NullMarked
package porebench.record.study;

import org.jspecify.annotations.NullMarked;
