package porebench.store.rows;

import java.sql.SQLException;
import org.jdbi.v3.core.JdbiException;

/** A statement that was made without Jdbi, for its speed, and failed. */
public final class StatementFailed extends JdbiException {
    private static final long serialVersionUID = 1;

    public StatementFailed(String table, SQLException cause) {
        super("a row of " + table + " was not read or written", cause);
    }
}
