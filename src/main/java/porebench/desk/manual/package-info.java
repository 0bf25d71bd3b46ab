/**
 * The manual in the window: its pages, read from the jar and shown with contents, search and links.
 *
 * <p>The pages stand in {@code docs/manual}; the list of problems and the glossary are made from the texts of the program.
 */
@NullMarked
package porebench.desk.manual;

import org.jspecify.annotations.NullMarked;
