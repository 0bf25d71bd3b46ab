/**
 * Air content from a reading and the aggregate correction factor, and its reporting rules.
 *
 * <p>Imports {@code quantity} and the root types of {@code method}.
 */
@NullMarked
package porebench.method.air;

import org.jspecify.annotations.NullMarked;
