/**
 * The Variability page: how the trials of a determination vary, in a sentence, in questions, in numbers and in two plots.
 *
 * <p>Imports {@code desk}, {@code desk.form} and {@code chart}; no other screen. Nothing is ever left out of the numbers
 * here: a person strikes a trial on the Trials page, with a reason.
 */
@NullMarked
package porebench.desk.variability;

import org.jspecify.annotations.NullMarked;
