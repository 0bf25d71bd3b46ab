/**
 * The registers of the whole laboratory: sources, meters, and the factors of all mixes.
 *
 * <p>Imports {@code desk}, {@code desk.form} and {@code desk.table}; imported by {@code desk.frame} only.
 */
@NullMarked
package porebench.desk.register;

import org.jspecify.annotations.NullMarked;
