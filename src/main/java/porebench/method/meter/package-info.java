/**
 * The measuring bowl and the meter: bowl volume, dial curve, column calibration, leak, drift, and how long they hold.
 *
 * <p>Imports {@code quantity}, {@code statistics} and the root types of {@code method}, among them the model of both meter
 * types, {@link porebench.method.BoyleTypeA} and {@link porebench.method.BoyleTypeB}, which the simulated bench uses too.
 */
@NullMarked
package porebench.method.meter;

import org.jspecify.annotations.NullMarked;
