/**
 * CSV in and out: good rows and every problem of a file, and the demo laboratory, which comes as such files.
 *
 * <p>Imports {@code record}, {@code method} and {@code quantity}; alone imports OpenCSV. Reached through
 * {@code porebench.port.LabSheets}, wired in {@code app}. Its rooms are {@code text}, {@code sheet}, {@code calibration} and
 * {@code whole}. The formats are described in {@code docs/formats.md}.
 */
@NullMarked
package porebench.exchange;

import org.jspecify.annotations.NullMarked;
