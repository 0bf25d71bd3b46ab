package porebench.store.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * The first bytes of a lab book's file, by which it is known without any database opening it.
 *
 * <p>Source: SQLite, "Database File Format", section 1.3: the magic string at 0, the user version at 60 and the application
 * id at 68, both big-endian.
 *
 * @param applicationId whose file it is
 * @param version the number of the last schema step that was taken
 */
public record Header(int applicationId, int version) {
    /** The application id of a lab book: the letters PBLB. */
    public static final int LAB_BOOK = 0x50424C42;

    /** How long the header is, in bytes. */
    public static final int LENGTH = 100;

    private static final int VERSION_AT = 60;
    private static final int APPLICATION_AT = 68;
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    /** Reads the header of a file; empty when it is no SQLite file at all. */
    public static Optional<Header> read(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        byte[] first;
        try (InputStream stream = Files.newInputStream(file)) {
            first = stream.readNBytes(LENGTH);
        }
        if (first.length < LENGTH || !Arrays.equals(first, 0, MAGIC.length, MAGIC, 0, MAGIC.length)) {
            return Optional.empty();
        }
        ByteBuffer buffer = ByteBuffer.wrap(first);
        return Optional.of(new Header(buffer.getInt(APPLICATION_AT), buffer.getInt(VERSION_AT)));
    }

    public boolean isLabBook() {
        return applicationId == LAB_BOOK && version >= 1;
    }
}
