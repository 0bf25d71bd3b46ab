/**
 * The page that a crew opens on a phone: one HTML file that asks nothing of any network. Imported by {@code print} alone.
 */
@NullMarked
package porebench.print.phone;

import org.jspecify.annotations.NullMarked;
