/**
 * The record of a calibration, and the form for making one.
 */
@NullMarked
package porebench.print.calibration;

import org.jspecify.annotations.NullMarked;
