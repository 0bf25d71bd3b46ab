/**
 * The records as one transaction sees them, how drafts are kept, and what is kept beside the entries.
 *
 * <p>Imports {@code store.chain}, {@code store.rows}, {@code store.file}, {@code evidence} and what lies below. {@code store.check}
 * and {@code store} may import it.
 */
@NullMarked
package porebench.store.records;

import org.jspecify.annotations.NullMarked;
