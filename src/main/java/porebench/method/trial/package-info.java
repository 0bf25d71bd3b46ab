/**
 * Trials on Type A and Type B meters, what is doubtful about each, and the summary of a determination.
 *
 * <p>Imports {@code quantity}, {@code statistics} and the root types of {@code method}.
 */
@NullMarked
package porebench.method.trial;

import org.jspecify.annotations.NullMarked;
