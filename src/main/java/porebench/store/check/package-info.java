/**
 * Looking a lab book over: its pages, its tables, its chain, and what is kept beside.
 *
 * <p>Imports the other rooms of {@code store}, {@code evidence} and what lies below. {@code store} may import it.
 */
@NullMarked
package porebench.store.check;

import org.jspecify.annotations.NullMarked;
