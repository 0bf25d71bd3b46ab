/**
 * What rests on a source: its mixes, their factors and the cards that are out, and what another stone would do to them.
 */
@NullMarked
package porebench.evidence.source;

import org.jspecify.annotations.NullMarked;
