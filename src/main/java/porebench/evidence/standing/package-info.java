/**
 * How every mix stands, kept beside the entries of a lab book so that it need not be worked out of them each time. Whoever shows
 * the laboratory as a whole asks here; it asks {@code porebench.evidence} for each mix that something happened to.
 */
@NullMarked
package porebench.evidence.standing;

import org.jspecify.annotations.NullMarked;
