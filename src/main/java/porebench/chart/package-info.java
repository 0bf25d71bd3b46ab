/**
 * Plots: the factor by trial and over time; the dial and the bowl of a meter; control charts, budgets and studies.
 *
 * <p>Imports {@code record} and what lies below, and alone imports JFreeChart. Screens hand in plain records, the look of
 * their theme and a locale, and are given a Swing component.
 * Its rooms are {@code factor}, {@code control}, {@code study} and {@code meter}, on {@code look}.
 */
@NullMarked
package porebench.chart;

import org.jspecify.annotations.NullMarked;
