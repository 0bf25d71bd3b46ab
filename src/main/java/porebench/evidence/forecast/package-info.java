/**
 * The forecast of a mix from what a laboratory's trials found: which trials count, with which stone in the bowl.
 *
 * <p>Nothing here can be issued, printed or kept.
 */
@NullMarked
package porebench.evidence.forecast;

import org.jspecify.annotations.NullMarked;
