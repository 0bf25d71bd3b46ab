package porebench.port;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import porebench.method.Problem;

/**
 * A file that is to be written: where, and whether one that is there may be replaced. Everything the program writes for
 * somebody goes through here.
 *
 * <p>What is written is a regular file and nothing else: no folder, no device, no lab book nor other database, no file beside
 * one, and no file that is there already unless {@link #replace} says so. A link is followed to the file it leads to, which is
 * then what is looked at and written.
 *
 * @param path where
 * @param replace whether a file that is there may be replaced
 */
public record OutputFile(Path path, boolean replace) {
    /** Writes what is to stand in a file. */
    @FunctionalInterface
    public interface Content {
        void into(OutputStream file) throws IOException;
    }

    /** Returns a file that must not be there yet. */
    public static OutputFile fresh(Path path) {
        return new OutputFile(path, false);
    }

    /** Returns a file that may be there, and is then replaced. */
    public static OutputFile replacing(Path path) {
        return new OutputFile(path, true);
    }

    /** Returns why nothing may be written here as things stand now; empty when it may. */
    public List<Problem> problems() {
        return OutputPlace.at(path).problems(replace);
    }

    /**
     * Writes the file whole or not at all.
     *
     * @throws OutputRefused if nothing may be written here
     * @throws IOException if the file system fails; a file that was there before is then as it was
     */
    public void write(Content content) throws IOException {
        try (PreparedFile prepared = prepare(content)) {
            prepared.release();
        }
    }

    /**
     * Writes everything to the disk under another name beside its place, where it waits to be released.
     *
     * @throws OutputRefused if nothing may be written here
     * @throws IOException if the file system fails; nothing is then left
     */
    public PreparedFile prepare(Content content) throws IOException {
        OutputRefused.unlessNone(problems());
        return PreparedFile.of(this, OutputPlace.at(path).target(), content);
    }
}
