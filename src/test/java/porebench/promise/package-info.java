/**
 * What the program says of how often it is right, held against simulations with fixed seeds: few runs in every build, many in
 * the profile {@code promises}, which also writes the table of docs/variability.md.
 */
@NullMarked
package porebench.promise;

import org.jspecify.annotations.NullMarked;
