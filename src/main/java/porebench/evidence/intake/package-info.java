/**
 * Taking in records from files: which determination a trial belongs to, what is already there, what is refused.
 */
@NullMarked
package porebench.evidence.intake;

import org.jspecify.annotations.NullMarked;
