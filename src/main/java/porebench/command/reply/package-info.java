/**
 * What all commands share: how one is run, what it is given from outside, and how it answers as text and as JSON.
 */
@NullMarked
package porebench.command.reply;

import org.jspecify.annotations.NullMarked;
