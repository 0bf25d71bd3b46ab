package porebench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import porebench.record.chain.Head;
import porebench.store.check.ChainCheck;
import porebench.store.check.Faults;
import porebench.store.check.Inspection;
import porebench.store.check.PagesCheck;
import porebench.store.file.Header;
import porebench.store.file.Session;
import porebench.store.file.SqliteFile;

/**
 * Which file a lab book was opened as, to notice that the path leads to another one, or to none, before something is
 * acknowledged that nobody will find again.
 *
 * <p>A file is known by the key its file system gives it (the inode); where there is none, by when it was made. The same is
 * asked of the log beside it, in which what is kept stands first. A file that was written over in its place keeps its key: when
 * its size or time is no longer the one last seen, it is read once more through a connection of its own, and must be whole and
 * hold the newest entry known here.
 *
 * <p>The file's bytes are never read past SQLite here: closing any other descriptor of a file gives up the locks that this
 * process holds on it (POSIX advisory locks; SQLite, "How To Corrupt An SQLite Database File", section 2.2).
 */
final class FileIdentity {
    private final Path file;
    private final Object key;
    private @Nullable Object logKey;
    private Seen seen;
    private Head known = Head.EMPTY;

    /** How a file looked. */
    private record Seen(long size, FileTime changed) {}

    FileIdentity(Path file) throws IOException {
        this.file = file;
        BasicFileAttributes there = attributes(file);
        this.key = keyOf(there);
        this.seen = seenIn(there);
    }

    private static BasicFileAttributes attributes(Path path) throws IOException {
        return Files.readAttributes(path, BasicFileAttributes.class);
    }

    private static Object keyOf(BasicFileAttributes there) {
        Object given = there.fileKey();
        return given == null ? there.creationTime() : given;
    }

    private static Seen seenIn(BasicFileAttributes there) {
        return new Seen(there.size(), there.lastModifiedTime());
    }

    /** Remembers how file and log look now, and how far the lab book reaches. */
    void remember(Head head) throws IOException {
        known = head;
        seen = seenIn(attributes(file));
        Path log = SqliteFile.logOf(file);
        if (Files.exists(log)) {
            logKey = keyOf(attributes(log));
        }
    }

    /** Returns whether the path still leads to the file that was opened, and to its log. */
    boolean isThere() {
        try {
            BasicFileAttributes there = attributes(file);
            Object log = logKey;
            return keyOf(there).equals(key)
                    && there.size() >= Header.LENGTH
                    && (log == null || keyOf(attributes(SqliteFile.logOf(file))).equals(log));
        } catch (IOException gone) {
            return false;
        }
    }

    /** Returns whether the file is the one last seen, or was changed since by lab books only. */
    boolean isUntouched() {
        try {
            return isThere() && (seenIn(attributes(file)).equals(seen) || isWholeAndReachesAsFar());
        } catch (IOException gone) {
            return false;
        }
    }

    private boolean isWholeAndReachesAsFar() {
        try (Connection fresh = SqliteFile.readOnly(file).getConnection();
                Session session = new Session(fresh)) {
            return session.read(handle -> {
                Faults faults = new Faults();
                PagesCheck.full(handle, faults);
                ChainCheck.links(handle, faults);
                return faults.isEmpty() && (known.entries() == 0 || Inspection.holds(handle, known));
            });
        } catch (SQLException | RuntimeException unreadable) {
            return false;
        }
    }

    /** Returns the log beside a file that holds anything. */
    static Optional<Path> logBeside(Path file) throws IOException {
        Path log = SqliteFile.logOf(file);
        return Files.exists(log) && Files.size(log) > 0 ? Optional.of(log) : Optional.empty();
    }
}
