/**
 * Whether the factors of a lab book still hold, by field readings with a density beside them.
 *
 * <p>Imported by {@code command} and {@code desk}.
 */
@NullMarked
package porebench.evidence.hold;

import org.jspecify.annotations.NullMarked;
