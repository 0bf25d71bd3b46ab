/**
 * Uncertainty budgets: of a factor, and of a field reading corrected by it.
 *
 * <p>Imports {@code quantity}, {@code statistics} and the root types of {@code method}; what a trial or a calibration found
 * comes in as plain numbers.
 */
@NullMarked
package porebench.method.budget;

import org.jspecify.annotations.NullMarked;
