/**
 * The workbench window: the frame, what it is looking at, and what all its screens share.
 *
 * <p>Imports {@code chart}, {@code record} and what lies below. Files, paper and CSV are reached through
 * {@code port}. A screen is three classes: a model without Swing, the page, and its actions.
 */
@NullMarked
package porebench.desk;

import org.jspecify.annotations.NullMarked;
