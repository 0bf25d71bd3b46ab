/**
 * The dialogs of the window and what stands in them: questions and messages, the laboratory, profiles, what an import brings, about
 * the program and its licences.
 *
 * <p>Imports {@code desk}, {@code desk.form} and {@code desk.table}; imported by {@code desk.frame} and {@code desk.frame.book} only.
 */
@NullMarked
package porebench.desk.frame.dialog;

import org.jspecify.annotations.NullMarked;
