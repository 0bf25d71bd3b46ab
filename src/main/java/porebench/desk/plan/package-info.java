/**
 * The plan of a week: what asks for a test, as a person arranges it by day, who makes it, and what to fetch.
 *
 * <p>Imports {@code desk}, {@code desk.form}, {@code desk.table} and what lies below. Only {@code desk.frame} may import it.
 */
@NullMarked
package porebench.desk.plan;

import org.jspecify.annotations.NullMarked;
