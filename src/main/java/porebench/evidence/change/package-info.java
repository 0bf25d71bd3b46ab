/**
 * What trials say of a change: those made before it against those made after it.
 */
@NullMarked
package porebench.evidence.change;

import org.jspecify.annotations.NullMarked;
