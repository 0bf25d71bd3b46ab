/**
 * What stands on paper: cards, trial sheets, calibration records and forms.
 */
@NullMarked
package porebench.evidence.paper;

import org.jspecify.annotations.NullMarked;
