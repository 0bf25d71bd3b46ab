/**
 * Factor cards and lab sheets, as PDF files, as pictures on the screen and on paper.
 *
 * <p>May import {@code record}, {@code method} and {@code quantity}, and alone may import PDFBox. What a page says is settled
 * in {@code record}; this package settles how it looks. Windows and commands use it through
 * {@link porebench.record.port.Press}; {@code app} wires it.
 */
@NullMarked
package porebench.print;

import org.jspecify.annotations.NullMarked;
