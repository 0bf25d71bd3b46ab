/**
 * The text of a CSV file, whatever it states: lines, headings, cells and their escapes, tables of numbers, and the problems
 * found.
 *
 * <p>Imports {@code port} and what lies below, and OpenCSV; no other room of {@code exchange}. Every other one may import it.
 */
@NullMarked
package porebench.exchange.text;

import org.jspecify.annotations.NullMarked;
