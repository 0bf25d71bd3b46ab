/**
 * Codes of squares read from pictures. Imported by {@code print} alone.
 */
@NullMarked
package porebench.print.code;

import org.jspecify.annotations.NullMarked;
