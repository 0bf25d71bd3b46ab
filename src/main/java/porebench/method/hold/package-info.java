/**
 * Whether a factor still holds: air by the meter, corrected, against air by density, pair by pair.
 */
@NullMarked
package porebench.method.hold;

import org.jspecify.annotations.NullMarked;
