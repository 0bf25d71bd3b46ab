package porebench.command.reply;

import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Puts the details of failures into the log. */
public final class Failures {
    private static final Logger LOG = Logger.getLogger(Failures.class.getName());

    private Failures() {}

    /** Logs a failure and returns the file in which its details stand; empty when there is none. */
    public static Optional<Path> log(RuntimeException failure, Machine here) {
        LOG.log(Level.WARNING, "a command failed", failure);
        return here.log().get();
    }
}
