/**
 * Commands on a lab book: taking in, handing out, issuing, checking, copying.
 */
@NullMarked
package porebench.command.book;

import org.jspecify.annotations.NullMarked;
