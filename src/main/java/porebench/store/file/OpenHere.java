package porebench.store.file;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import porebench.port.OpenBooks;

/** Reads headers of files that this process may have open: those are read through SQLite only ({@link OpenBooks}). */
public final class OpenHere {
    private OpenHere() {}

    /** Reads a file's header; of a file that is open here SQLite is asked. */
    public static Optional<Header> header(Path file) throws IOException, SQLException {
        if (!OpenBooks.contains(file)) {
            return Header.read(file);
        }
        try (Connection connection = SqliteFile.readOnly(file).getConnection()) {
            return Optional.of(new Header(Header.LAB_BOOK, SqliteFile.version(connection)));
        }
    }
}
