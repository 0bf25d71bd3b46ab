/**
 * The forecast: what the pores of each source add to the factor, from the laboratory's trials, and the factor of a mix that was
 * not tested, which is no factor and cannot be issued.
 */
@NullMarked
package porebench.method.forecast;

import org.jspecify.annotations.NullMarked;
