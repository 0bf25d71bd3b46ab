package porebench.port;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import porebench.method.Problem;

/**
 * What is at a place in the file system where a file is to be written.
 *
 * <p>Source of the marks by which a database and its side files are known: SQLite, "Database File Format", sections 1.3, 3 and
 * 4.1 (recalled).
 *
 * @param path the place as it was asked for
 */
record OutputPlace(Path path) {
    private static final String FIELD = "out";
    private static final List<String> SIDES = List.of("-wal", "-shm", "-journal");
    private static final int LONGEST_MARK = 16;

    private static final List<byte[]> DATABASE = List.of("SQLite format 3\0".getBytes(StandardCharsets.US_ASCII));
    private static final List<byte[]> SIDE_FILE = List.of(
            HexFormat.of().parseHex("377f0682"),
            HexFormat.of().parseHex("377f0683"),
            HexFormat.of().parseHex("d9d505f920a163d7"));

    static OutputPlace at(Path path) {
        return new OutputPlace(path.toAbsolutePath().normalize());
    }

    /** Returns where the file will be: behind a link, the file the link leads to. */
    Path target() throws IOException {
        return Files.isSymbolicLink(path) ? path.toRealPath() : path;
    }

    List<Problem> problems(boolean replace) {
        return problem(replace).stream().toList();
    }

    private Optional<Problem> problem(boolean replace) {
        Path folder = path.getParent();
        if (folder == null || Files.isDirectory(path)) {
            return refused("output.is-folder", path);
        }
        if (!Files.isDirectory(folder)) {
            return refused(Problem.Kind.NO_FOLDER, "output.folder-missing", folder, path.getFileName());
        }
        if (!Files.exists(path)) {
            return Files.exists(path, LinkOption.NOFOLLOW_LINKS)
                    ? refused("output.link-leads-nowhere", path)
                    : besideDatabase(path);
        }
        return Files.isRegularFile(path) ? ofFile(replace) : refused("output.not-a-file", path);
    }

    private Optional<Problem> ofFile(boolean replace) {
        try {
            if (OpenBooks.contains(path)) {
                return refused(Problem.Kind.LAB_BOOK, "output.lab-book", path);
            }
            byte[] start = startOf(path);
            if (beginsWith(start, DATABASE) || isDatabaseAtWork(path)) {
                return refused(Problem.Kind.LAB_BOOK, "output.lab-book", path);
            }
            if (beginsWith(start, SIDE_FILE)) {
                return refused("output.side-file", path);
            }
            Optional<Problem> beside = besideDatabase(path).or(() -> besideDatabase(unlinked()));
            if (beside.isPresent()) {
                return beside;
            }
        } catch (IOException unreadable) {
            // What cannot be looked at may be a lab book.
            return refused("output.unreadable", path);
        }
        if (!replace) {
            return refused(Problem.Kind.FILE_THERE, "output.there", path);
        }
        return Files.isWritable(path) ? Optional.empty() : refused("output.write-protected", path);
    }

    private Path unlinked() {
        try {
            return target();
        } catch (IOException gone) {
            return path;
        }
    }

    /** A new database is an empty file until what stands in its log is brought over. */
    private static boolean isDatabaseAtWork(Path file) {
        return Files.exists(file.resolveSibling(file.getFileName() + SIDES.get(0)))
                || Files.exists(file.resolveSibling(file.getFileName() + SIDES.get(2)));
    }

    /** A database would take a file of such a name for its own log, whether or not it has one at the moment. */
    private static Optional<Problem> besideDatabase(Path file) {
        String name = String.valueOf(file.getFileName());
        for (String side : SIDES) {
            if (name.length() > side.length() && name.toLowerCase(Locale.ROOT).endsWith(side)) {
                Path database = file.resolveSibling(name.substring(0, name.length() - side.length()));
                if (Files.exists(database) || Files.exists(file)) {
                    return refused("output.side-file", file);
                }
            }
        }
        return Optional.empty();
    }

    private static byte[] startOf(Path file) throws IOException {
        try (InputStream stream = Files.newInputStream(file)) {
            return stream.readNBytes(LONGEST_MARK);
        }
    }

    private static boolean beginsWith(byte[] start, List<byte[]> marks) {
        return marks.stream()
                .anyMatch(mark ->
                        start.length >= mark.length && Arrays.equals(start, 0, mark.length, mark, 0, mark.length));
    }

    private static Optional<Problem> refused(String code, Path... paths) {
        return refused(Problem.Kind.STATED, code, paths);
    }

    private static Optional<Problem> refused(Problem.Kind kind, String code, Path... paths) {
        return Optional.of(Problem.error(
                        FIELD, code, Arrays.stream(paths).map(Path::toString).toArray())
                .of(kind));
    }
}
