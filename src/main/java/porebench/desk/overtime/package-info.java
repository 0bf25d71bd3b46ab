/**
 * The factor over time: control charts of all trials that count, by mix, source, meter or operator.
 *
 * <p>A place of the whole laboratory, beside the registers: most of what is asked of it (a source, a meter, an operator)
 * crosses mixes. Imports what screens import; the statistics are those of {@code statistics}.
 */
@NullMarked
package porebench.desk.overtime;

import org.jspecify.annotations.NullMarked;
