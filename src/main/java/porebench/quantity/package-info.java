/**
 * Physical quantities and their units: values in SI inside, units only at the edge.
 *
 * <p>Imports nothing of Porebench; every other package may import it.
 */
@NullMarked
package porebench.quantity;

import org.jspecify.annotations.NullMarked;
