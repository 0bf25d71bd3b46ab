/**
 * Records as rows: the table of each kind, its cells and parts, and which rows a question means.
 *
 * <p>Imports {@code record} and what lies below; no other room of {@code store}. Every other one but {@code file} may import it.
 */
@NullMarked
package porebench.store.rows;

import org.jspecify.annotations.NullMarked;
