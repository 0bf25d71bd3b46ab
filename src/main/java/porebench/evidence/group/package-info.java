/**
 * Groups of mixes that take one factor: how each member stands and how far it is from the tested mix, and which mixes are like one.
 */
@NullMarked
package porebench.evidence.group;

import org.jspecify.annotations.NullMarked;
