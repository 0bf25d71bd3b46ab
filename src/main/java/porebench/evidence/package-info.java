/**
 * What follows from what is kept: judged trials and determinations, the story of each meter, states and the register.
 *
 * <p>Imports {@code record} and what stands below it. Everything here can be worked out again from the lab book.
 */
@NullMarked
package porebench.evidence;

import org.jspecify.annotations.NullMarked;
