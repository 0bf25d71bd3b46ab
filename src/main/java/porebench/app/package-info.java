/**
 * Starts Porebench and wires the other packages together by constructor arguments.
 *
 * <p>May import every package; no package imports this one.
 */
@NullMarked
package porebench.app;

import org.jspecify.annotations.NullMarked;
