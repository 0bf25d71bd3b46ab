/**
 * Lines from a balance on a serial line. It alone knows the library that opens serial lines; everybody else reaches it through
 * {@code porebench.port.SerialLines}.
 */
@NullMarked
package porebench.balance;

import org.jspecify.annotations.NullMarked;
