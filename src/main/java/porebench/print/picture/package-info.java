/**
 * Plots as PNG, SVG and PDF files.
 */
@NullMarked
package porebench.print.picture;

import org.jspecify.annotations.NullMarked;
