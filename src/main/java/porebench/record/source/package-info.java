/**
 * What the versions of a source say: its stones one after the other, and what a new version may be.
 */
@NullMarked
package porebench.record.source;

import org.jspecify.annotations.NullMarked;
