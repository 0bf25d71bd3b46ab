/**
 * The lab book as a chain of entries: how far it reaches, and what each entry holds.
 */
@NullMarked
package porebench.record.chain;

import org.jspecify.annotations.NullMarked;
