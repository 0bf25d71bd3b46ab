/**
 * Readings laid out for a study of who and what varies.
 */
@NullMarked
package porebench.evidence.study;

import org.jspecify.annotations.NullMarked;
