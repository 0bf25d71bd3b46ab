package porebench.port;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * A file that stands whole on the disk beside its place and waits: released it takes its place, closed without that it is
 * gone.
 */
public final class PreparedFile implements AutoCloseable {
    private final OutputFile wanted;
    private final Path target;
    private final Path beside;

    private PreparedFile(OutputFile wanted, Path target, Path beside) {
        this.wanted = wanted;
        this.target = target;
        this.beside = beside;
    }

    static PreparedFile of(OutputFile wanted, Path target, OutputFile.Content content) throws IOException {
        // Not a temporary file of the system's kind: that would be readable by its owner only, even in its place.
        Path beside = target.resolveSibling(".porebench-" + UUID.randomUUID() + ".part");
        PreparedFile prepared = new PreparedFile(wanted, target, beside);
        boolean isWhole = false;
        try {
            fill(beside, content);
            isWhole = true;
            return prepared;
        } finally {
            if (!isWhole) {
                prepared.close();
            }
        }
    }

    private static void fill(Path beside, OutputFile.Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                OutputStream stream = new BufferedOutputStream(Channels.newOutputStream(channel))) {
            content.into(stream);
            stream.flush();
            channel.force(true);
        }
    }

    /** Returns the file it becomes. */
    public Path path() {
        return wanted.path();
    }

    /**
     * Takes its place, after looking once more at what is there.
     *
     * @throws OutputRefused if something came there meanwhile that must not be replaced
     * @throws IOException if the file system fails; a file that was there before is then as it was
     */
    public void release() throws IOException {
        OutputRefused.unlessNone(wanted.problems());
        try {
            if (wanted.replace()) {
                replace();
            } else {
                Files.move(beside, target);
            }
        } catch (FileAlreadyExistsException meanwhile) {
            OutputRefused.unlessNone(wanted.problems());
            throw meanwhile;
        }
    }

    private void replace() throws IOException {
        try {
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Removes it if it was not released. */
    @Override
    public void close() throws IOException {
        Files.deleteIfExists(beside);
    }
}
