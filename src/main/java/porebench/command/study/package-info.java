/**
 * Commands on a file of values: summaries, control charts and studies.
 */
@NullMarked
package porebench.command.study;

import org.jspecify.annotations.NullMarked;
