/**
 * The lab book in SQL: one SQLite file, its numbered schema steps, and a table a kind of record.
 *
 * <p>Alone may import JDBC, Jdbi and Flyway. Imports {@code record} and below; only {@code app} may import it.
 */
@NullMarked
package porebench.store;

import org.jspecify.annotations.NullMarked;
