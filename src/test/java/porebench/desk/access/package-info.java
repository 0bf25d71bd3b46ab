/** What a window says to those who do not see it, and how well it is seen: tests look at whole windows with it. */
@NullMarked
package porebench.desk.access;

import org.jspecify.annotations.NullMarked;
