package porebench.print;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file whole or not at all: beside its place first, then moved there. */
final class WholeFile {
    private WholeFile() {}

    static void write(Path file, byte[] content) throws IOException {
        Path place = file.toAbsolutePath();
        // Not a temporary file of the system's kind: that would be readable by its owner only, even after the move.
        Path beside = place.resolveSibling(".porebench-" + UUID.randomUUID() + ".part");
        try {
            Files.write(beside, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            move(beside, place);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        if (Files.isDirectory(to)) {
            throw new IOException("there is a folder of this name: " + to);
        }
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
