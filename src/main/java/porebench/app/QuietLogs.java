package porebench.app;

import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Keeps the libraries' progress notes off standard error, which is for problems; their warnings still come through. */
final class QuietLogs {
    /** Held on to, because the log manager forgets the level of a logger that nobody holds. */
    private static final List<Logger> LIBRARIES =
            List.of(Logger.getLogger("org.flywaydb"), Logger.getLogger("org.jdbi"), Logger.getLogger("org.apache"));

    private QuietLogs() {}

    static void keep() {
        LIBRARIES.forEach(library -> library.setLevel(Level.WARNING));
    }
}
