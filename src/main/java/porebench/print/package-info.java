/**
 * Factor cards and lab sheets, as PDF files, as pictures on the screen and on paper.
 *
 * <p>May import {@code port}, {@code evidence} and what they may, and alone may import PDFBox. What a page says is settled
 * in {@code evidence.paper}; this package settles how it looks. Windows and commands use it through
 * {@link porebench.port.Press}; {@code app} wires it.
 */
@NullMarked
package porebench.print;

import org.jspecify.annotations.NullMarked;
