/**
 * The figures of named standards, read from data, and a laboratory's own copies of them.
 *
 * <p>Imports {@code quantity} and the root types of {@code method}.
 */
@NullMarked
package porebench.method.profile;

import org.jspecify.annotations.NullMarked;
