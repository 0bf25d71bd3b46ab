/**
 * Training books: the bench that is simulated, and what was planted in it.
 */
@NullMarked
package porebench.evidence.practice;

import org.jspecify.annotations.NullMarked;
