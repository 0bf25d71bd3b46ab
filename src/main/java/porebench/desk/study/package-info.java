/**
 * The Studies screen: who and what varies, by operators on shared samples, in layers, or between laboratories.
 *
 * <p>Data come from a CSV file, or for layers from the trials of the lab book that count.
 */
@NullMarked
package porebench.desk.study;

import org.jspecify.annotations.NullMarked;
