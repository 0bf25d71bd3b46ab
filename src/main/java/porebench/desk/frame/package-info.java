/**
 * The workbench window itself: frame, menus, theme, what it remembers, and the list of all pages. Rooms: {@code book} for lab books
 * as a whole, {@code dialog} for dialogs, {@code rail} for what stands beside and above the pages.
 *
 * <p>Imports every screen of {@code desk}; imported by {@code app} only.
 */
@NullMarked
package porebench.desk.frame;

import org.jspecify.annotations.NullMarked;
