/** Factor cards by the ten thousand, beside bare pages with the same texts. */
@NullMarked
package porebench.bench.cards;

import org.jspecify.annotations.NullMarked;
