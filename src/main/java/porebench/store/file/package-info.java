/**
 * One SQLite file: its header, its connections, its schema steps, and why it failed.
 *
 * <p>Imports {@code port} and what lies below; no other room of {@code store}. Every other one may import it.
 */
@NullMarked
package porebench.store.file;

import org.jspecify.annotations.NullMarked;
