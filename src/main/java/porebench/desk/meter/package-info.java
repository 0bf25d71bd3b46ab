/**
 * The page of one meter: its state, its calibrations with what they tell, and the form for a new calibration.
 *
 * <p>Imports {@code desk}, {@code desk.form}, {@code desk.table} and {@code chart}; imported by {@code desk.frame} only.
 */
@NullMarked
package porebench.desk.meter;

import org.jspecify.annotations.NullMarked;
