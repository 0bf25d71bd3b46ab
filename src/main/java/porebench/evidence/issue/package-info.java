/**
 * Deciding a factor: what speaks against issuing it, who takes that on, and whether the evidence is still the same.
 */
@NullMarked
package porebench.evidence.issue;

import org.jspecify.annotations.NullMarked;
