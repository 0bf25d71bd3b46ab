/**
 * Where each factor card is, whether what stands on it still holds, and what has to be called back. Reads records and the lines of
 * the register; imported by command, desk, print and the import.
 */
@NullMarked
package porebench.evidence.custody;

import org.jspecify.annotations.NullMarked;
