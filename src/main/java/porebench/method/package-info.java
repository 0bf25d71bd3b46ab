/**
 * What the computations of the test method share: problems, rounding, figures of a standard, water density.
 *
 * <p>Imports quantities and statistics. Its subpackages hold one computation each and do not see one another.
 */
@NullMarked
package porebench.method;

import org.jspecify.annotations.NullMarked;
