/**
 * The card that rides in the truck.
 */
@NullMarked
package porebench.print.card;

import org.jspecify.annotations.NullMarked;
