/**
 * The names by which records are known; each kind has its own.
 */
@NullMarked
package porebench.record.id;

import org.jspecify.annotations.NullMarked;
