/**
 * The correction sample: fine and coarse aggregate masses, waters and the weigh-out list for a mix and a bowl.
 *
 * <p>Imports {@code quantity} and the root types of {@code method}.
 */
@NullMarked
package porebench.method.sample;

import org.jspecify.annotations.NullMarked;
