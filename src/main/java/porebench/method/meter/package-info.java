/**
 * The measuring bowl and the meter: bowl volume from weighings with water.
 *
 * <p>Imports {@code quantity} and the root types of {@code method}.
 */
@NullMarked
package porebench.method.meter;

import org.jspecify.annotations.NullMarked;
