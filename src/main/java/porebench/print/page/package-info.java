/**
 * What every page is made of: typefaces, text that fits, facts, tables, cautions, and the flow from page to page.
 */
@NullMarked
package porebench.print.page;

import org.jspecify.annotations.NullMarked;
