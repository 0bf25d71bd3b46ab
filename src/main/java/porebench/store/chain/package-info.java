/**
 * The entries in their order: what is hashed and how, putting in, handing out and putting back a whole lab book.
 *
 * <p>Imports {@code store.rows}, {@code port} and what lies below. {@code store.records}, {@code store.check} and {@code store} may
 * import it.
 */
@NullMarked
package porebench.store.chain;

import org.jspecify.annotations.NullMarked;
