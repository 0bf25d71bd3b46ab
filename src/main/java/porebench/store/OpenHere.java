package porebench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;

/**
 * The lab books that this process has open, by file.
 *
 * <p>On POSIX systems a process loses the locks it holds on a file as soon as it closes any descriptor of it (SQLite, "How To
 * Corrupt An SQLite Database File", section 2.2): a file that is open here must be read through SQLite only.
 */
final class OpenHere {
    private static final ConcurrentMap<Path, Integer> FILES = new ConcurrentHashMap<>();

    private OpenHere() {}

    /** Notes that a file is open once more, and returns the name it is known by here. */
    static Path opened(Path file) throws IOException {
        Path real = file.toRealPath();
        FILES.merge(real, 1, Integer::sum);
        return real;
    }

    /** Returns what is to be done when a file is closed. */
    static Runnable closing(Path real) {
        return () -> closed(real);
    }

    static void closed(Path real) {
        FILES.computeIfPresent(real, (path, count) -> count == 1 ? null : count - 1);
    }

    static boolean contains(Path file) throws IOException {
        return Files.exists(file) && FILES.containsKey(file.toRealPath());
    }

    /** Reads a file's header; of a file that is open here SQLite is asked. */
    static Optional<Header> header(Path file) throws IOException, SQLException {
        if (!contains(file)) {
            return Header.read(file);
        }
        try (Connection connection = SqliteFile.readOnly(file).getConnection()) {
            return Optional.of(new Header(Header.LAB_BOOK, SqliteFile.version(connection)));
        }
    }
}
