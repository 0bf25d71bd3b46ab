/**
 * The lab book in SQL: one SQLite file, its numbered schema steps, and a table a kind of record.
 *
 * <p>Its rooms are {@code file}, {@code rows}, {@code chain}, {@code records} and {@code check}; what stands here opens, closes and
 * copies a lab book. Alone may import JDBC, Jdbi and Flyway. Imports {@code port} and what lies below; only {@code app} may import
 * it.
 */
@NullMarked
package porebench.store;

import org.jspecify.annotations.NullMarked;
