package porebench.port;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The files of lab books that this process has open.
 *
 * <p>On POSIX systems a process loses the locks it holds on a file as soon as it closes any descriptor of it (SQLite, "How To
 * Corrupt An SQLite Database File", section 2.2, seen): a file that is open here must never be opened by any other way, not
 * even to look at its first bytes.
 */
public final class OpenBooks {
    private static final Map<Path, Held> FILES = new HashMap<>();

    private OpenBooks() {}

    /**
     * A file that is open.
     *
     * @param times how often
     * @param key by which its file system knows it, whatever its name; empty where there is none
     */
    private record Held(int times, Optional<Object> key) {}

    /** Notes that a file is open once more, and returns the name it is known by here. */
    public static Path opened(Path file) throws IOException {
        Path real = file.toRealPath();
        Optional<Object> key = keyOf(real);
        synchronized (FILES) {
            FILES.merge(real, new Held(1, key), (held, once) -> new Held(held.times() + 1, key));
        }
        return real;
    }

    /** Notes that a file is open once less. */
    public static void closed(Path real) {
        synchronized (FILES) {
            FILES.computeIfPresent(
                    real, (path, held) -> held.times() == 1 ? null : new Held(held.times() - 1, held.key()));
        }
    }

    /** Returns whether a file is open here, by this or another name of it; the file is not opened to find out. */
    public static boolean contains(Path file) throws IOException {
        if (!Files.exists(file)) {
            return false;
        }
        Path real = file.toRealPath();
        Optional<Object> key = keyOf(real);
        synchronized (FILES) {
            return FILES.containsKey(real)
                    || key.isPresent()
                            && FILES.values().stream()
                                    .anyMatch(held -> held.key().equals(key));
        }
    }

    private static Optional<Object> keyOf(Path real) throws IOException {
        return Optional.ofNullable(
                Files.readAttributes(real, BasicFileAttributes.class).fileKey());
    }
}
