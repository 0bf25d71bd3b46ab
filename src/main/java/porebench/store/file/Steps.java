package porebench.store.file;

import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.callback.Callback;
import org.flywaydb.core.api.callback.Context;
import org.flywaydb.core.api.callback.Event;

/**
 * The numbered steps by which a lab book's tables came to be what they are.
 *
 * @param locations the folders on the class path that hold the steps
 * @param newest the number of the last step
 */
public record Steps(List<String> locations, int newest) {
    /** All steps this program knows. */
    public static final Steps ALL =
            new Steps(List.of("classpath:porebench/store/steps/shared", "classpath:porebench/store/steps/sqlite"), 24);

    /** Silent, because its failures are thrown; kept here, because a logger that nobody holds forgets its level. */
    private static final Logger FLYWAY_LOG = Logger.getLogger("org.flywaydb");

    public Steps {
        locations = List.copyOf(locations);
    }

    /** Takes the steps that were not taken yet, each whole or not at all, its number with it. */
    public void take(DataSource source) {
        FLYWAY_LOG.setLevel(Level.OFF);
        Flyway.configure(Steps.class.getClassLoader())
                .dataSource(source)
                .locations(locations.toArray(String[]::new))
                .target(Integer.toString(newest))
                .failOnMissingLocations(true)
                .validateMigrationNaming(true)
                .encoding(StandardCharsets.UTF_8)
                .table("schema_step")
                .installedBy("porebench")
                .cleanDisabled(true)
                .callbacks(new NumberAfterEachStep())
                .load()
                .migrate();
    }

    /** Writes the number of each step into the file's header, in the same transaction as the step. */
    private static final class NumberAfterEachStep implements Callback {
        @Override
        public boolean supports(Event event, Context context) {
            return event == Event.AFTER_EACH_MIGRATE;
        }

        @Override
        public boolean canHandleInTransaction(Event event, Context context) {
            return true;
        }

        @Override
        public void handle(Event event, Context context) {
            String step = context.getMigrationInfo().getVersion().getVersion();
            try (Statement statement = context.getConnection().createStatement()) {
                statement.execute("PRAGMA application_id = " + Header.LAB_BOOK);
                statement.execute("PRAGMA user_version = " + Integer.parseInt(step));
            } catch (SQLException failure) {
                throw new FlywayException("numbering step " + step, failure);
            }
        }

        @Override
        public String getCallbackName() {
            return "number after each step";
        }
    }
}
