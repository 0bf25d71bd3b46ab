/**
 * What the uncertainty of a factor is made of, as the lab book knows it.
 */
@NullMarked
package porebench.evidence.budget;

import org.jspecify.annotations.NullMarked;
