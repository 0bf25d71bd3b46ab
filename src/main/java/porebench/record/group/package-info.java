/**
 * Groups of mixes of like proportions that take one factor: when a mix is like the one that is tested, and what a group may be.
 */
@NullMarked
package porebench.record.group;

import org.jspecify.annotations.NullMarked;
