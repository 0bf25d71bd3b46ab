/**
 * What spells of production add up to: days, concrete, aggregate by source, loads a week.
 *
 * <p>Imports {@code record}, {@code record.book} and below; imported by {@code evidence} and above.
 */
@NullMarked
package porebench.record.production;

import org.jspecify.annotations.NullMarked;
