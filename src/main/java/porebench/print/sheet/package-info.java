/**
 * The sheet that goes with a trial to the bench.
 */
@NullMarked
package porebench.print.sheet;

import org.jspecify.annotations.NullMarked;
