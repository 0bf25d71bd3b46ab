/**
 * Sections that say whether a factor still holds after its source changed, and what it costs to be wrong.
 *
 * <p>Imports {@code desk} and {@code desk.form}, {@code chart} and below; {@code desk.frame} places it.
 */
@NullMarked
package porebench.desk.change;

import org.jspecify.annotations.NullMarked;
