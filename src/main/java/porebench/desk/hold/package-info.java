/**
 * The part of the Variability page that says whether the factor still holds, by field readings with a density.
 *
 * <p>Imported by {@code desk.frame}.
 */
@NullMarked
package porebench.desk.hold;

import org.jspecify.annotations.NullMarked;
