package porebench.store.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteOpenMode;

/** A SQLite file: how it is reached, and how it is copied whole. */
public final class SqliteFile {
    /** How long one window waits while another one writes, in ms. */
    private static final int PATIENCE_MILLISECONDS = 5000;

    private static final List<String> COMPANIONS = List.of("-wal", "-shm", "-journal");

    private SqliteFile() {}

    /** Returns a way to a file that is there, with write-ahead log, full synchronous commits and foreign keys. */
    public static SQLiteDataSource existing(Path file) {
        SQLiteConfig config = safely();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.resetOpenMode(SQLiteOpenMode.CREATE);
        return source(file, config);
    }

    /** Returns a way to a file that may not be there yet, without write-ahead log: all that is written is in the file. */
    public static SQLiteDataSource fresh(Path file) {
        return source(file, safely());
    }

    /** Returns a way to read a file together with the log beside it; nothing is written to either. */
    public static SQLiteDataSource readOnly(Path file) {
        SQLiteConfig config = safely();
        config.setReadOnly(true);
        return source(file, config);
    }

    /** Returns a way to read a file alone, as if no log lay beside it and nobody wrote to it. */
    public static SQLiteDataSource alone(Path file) {
        SQLiteConfig config = safely();
        config.setReadOnly(true);
        SQLiteDataSource source = source(file, config);
        source.setUrl(source.getUrl() + "?immutable=1");
        return source;
    }

    private static SQLiteConfig safely() {
        SQLiteConfig config = new SQLiteConfig();
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setPragma(SQLiteConfig.Pragma.RECURSIVE_TRIGGERS, "true");
        config.setBusyTimeout(PATIENCE_MILLISECONDS);
        return config;
    }

    /** A URI, because in a plain name the driver would take what follows a question mark for settings. */
    private static SQLiteDataSource source(Path file, SQLiteConfig config) {
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file.toAbsolutePath().toUri().toASCIIString());
        return source;
    }

    /** Returns the number of the last schema step that was taken, the write-ahead log included. */
    public static int version(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("PRAGMA user_version")) {
            return row.getInt(1);
        }
    }

    /** Writes everything that is in a database to a file, whole or not at all; what is there already stays. */
    public static void copy(Connection connection, Path file) throws SQLException, IOException {
        Path part = partOf(file);
        try {
            copyInto(connection, part);
            moveIntoPlace(part, file);
        } finally {
            delete(part);
        }
    }

    /** Writes everything that is in a database, its log included, to a file that is not there. */
    public static void copyInto(Connection connection, Path part) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement("VACUUM INTO ?")) {
            statement.setString(1, part.toAbsolutePath().toString());
            statement.execute();
        }
    }

    /** Brings what stands in the log into the file; the log stays as it is. */
    public static void foldIn(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA wal_checkpoint(FULL)");
        }
    }

    /** Returns the name under which a file is written before it gets its own. */
    public static Path partOf(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Path part = Files.createTempFile(folder, file.getFileName() + ".", ".part");
        Files.delete(part);
        return part;
    }

    /** Gives a finished file its name once it is safely on the disk; a file that has the name already stays. */
    public static void moveIntoPlace(Path part, Path file) throws IOException {
        sync(part);
        try {
            // A second name is refused where there is a file; moving may replace one that came between.
            Files.createLink(file, part);
            Files.delete(part);
        } catch (UnsupportedOperationException | FileSystemException noLinks) {
            Files.move(part, file);
        }
        syncFolderOf(file);
    }

    /** Gives a finished file the name of one that is there; at every moment there is one of them. */
    public static void moveOver(Path part, Path file) throws IOException {
        sync(part);
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        syncFolderOf(file);
    }

    private static void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Puts a new name safely on the disk where a folder can be synced; where it cannot, the system does so in its time. */
    private static void syncFolderOf(Path file) {
        try (FileChannel folder = FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException notOnThisSystem) {
            return;
        }
    }

    /** Returns the name of the log that SQLite keeps beside a file. */
    public static Path logOf(Path file) {
        return beside(file, "-wal");
    }

    /** Returns the names of all that SQLite may keep beside a file. */
    public static List<Path> companionsOf(Path file) {
        return COMPANIONS.stream().map(companion -> beside(file, companion)).toList();
    }

    public static Path beside(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    /** Removes an unfinished file and what SQLite put beside it. */
    public static void delete(Path part) throws IOException {
        Files.deleteIfExists(part);
        for (Path companion : companionsOf(part)) {
            Files.deleteIfExists(companion);
        }
    }
}
