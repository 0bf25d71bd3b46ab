/**
 * The workbench window itself: frame, menus, dialogs, theme, and the list of all pages.
 *
 * <p>Imports every screen of {@code desk}; imported by {@code app} only.
 */
@NullMarked
package porebench.desk.frame;

import org.jspecify.annotations.NullMarked;
