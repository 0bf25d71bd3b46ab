/**
 * A simulated bench for training and tests: trials of an aggregate whose true factor is known.
 *
 * <p>Imports {@code quantity} and the root types of {@code method}. The model of the meters stands in that root, because
 * this package and {@code method.meter} both need it and do not see each other; for the same reason a simulated trial is a
 * small record of its own, which {@code record} and {@code command} turn into trial sheets, marked as simulated.
 */
@NullMarked
package porebench.method.simulate;

import org.jspecify.annotations.NullMarked;
