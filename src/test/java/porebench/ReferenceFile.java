package porebench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A file of outside figures under {@code src/test/resources/reference/}, with where they come from.
 *
 * <p>Its first four lines are {@code # source:}, {@code # where:}, a mark and {@code # tolerance:}. The mark says how
 * the figures got here: {@code # read: seen}, {@code # read: recalled}, or {@code # computed: tool, version, script} with
 * a script of this project that computes them. Where some were read and the others computed, {@code # read:} is the
 * third line and {@code # computed:} the fifth. More comment lines may follow; then a header row, then rows parted by
 * commas without quotes. A cell that holds several numbers parts them by semicolons.
 *
 * @param source who published the figures
 * @param where the place in the source
 * @param read {@code seen} or {@code recalled}; empty when every figure was computed
 * @param computation what computed the figures; empty when all were read
 * @param tolerance how far a result may lie from the figures, and why
 * @param columns the header row
 * @param rows the rows below it
 */
public record ReferenceFile(
        String source,
        String where,
        Optional<String> read,
        Optional<Computation> computation,
        String tolerance,
        List<String> columns,
        List<Row> rows) {
    private static final Pattern COMPUTED = Pattern.compile("([^,]+), ([^,]+), (\\S+)");
    public static final Path FOLDER = Path.of("src", "test", "resources", "reference");

    /** A tool and its version, and the script of this project, relative to its folder, that computes the figures. */
    public record Computation(String tool, String version, String script) {}

    /** One row, its cells found by the name of their column. */
    public record Row(List<String> columns, List<String> cells) {
        public String text(String column) {
            int place = columns.indexOf(column);
            if (place < 0) {
                throw new IllegalArgumentException("no column " + column + " among " + columns);
            }
            return cells.get(place);
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        public int whole(String column) {
            return Integer.parseInt(text(column));
        }

        /** Returns the numbers of a cell that holds several. */
        public double[] numbers(String column) {
            return Arrays.stream(text(column).split(";", -1))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
        }
    }

    /** Reads a reference file by its name, such as {@code t-table.csv}. */
    public static ReferenceFile read(String name) {
        try {
            return parse(name, Files.readAllLines(FOLDER.resolve(name), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("reading reference file " + name, e);
        }
    }

    /** Reads the lines of a reference file; every departure from the form is an {@link IllegalArgumentException}. */
    public static ReferenceFile parse(String name, List<String> lines) {
        Optional<String> read = Optional.empty();
        Optional<Computation> computation = Optional.empty();
        if (begins(lines, 2, "computed")) {
            computation = Optional.of(computation(name, header(name, lines, 2, "computed")));
        } else {
            read = Optional.of(header(name, lines, 2, "read"));
            if (begins(lines, 4, "computed")) {
                computation = Optional.of(computation(name, header(name, lines, 4, "computed")));
            }
        }
        if (read.isPresent() && !List.of("seen", "recalled").contains(read.get())) {
            throw new IllegalArgumentException(name + ": read must be seen or recalled, but is " + read.get());
        }
        List<List<String>> table = lines.stream()
                .skip(4)
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> List.of(line.split(",", -1)))
                .toList();
        if (table.size() < 2) {
            throw new IllegalArgumentException(name + ": there must be a header row and at least one row");
        }
        List<String> columns = table.get(0);
        List<Row> rows =
                table.stream().skip(1).map(cells -> new Row(columns, cells)).toList();
        for (Row row : rows) {
            if (row.cells().size() != columns.size()) {
                throw new IllegalArgumentException(
                        name + ": a row must have the cells " + columns + ", but is " + row.cells());
            }
        }
        return new ReferenceFile(
                header(name, lines, 0, "source"),
                header(name, lines, 1, "where"),
                read,
                computation,
                header(name, lines, 3, "tolerance"),
                columns,
                rows);
    }

    private static Computation computation(String name, String text) {
        Matcher parts = COMPUTED.matcher(text);
        if (!parts.matches()) {
            throw new IllegalArgumentException(name + ": computed must be \"tool, version, script\", but is " + text);
        }
        return new Computation(parts.group(1), parts.group(2), parts.group(3));
    }

    private static boolean begins(List<String> lines, int place, String key) {
        return lines.size() > place && lines.get(place).startsWith("# " + key + ":");
    }

    private static String header(String name, List<String> lines, int place, String key) {
        String start = "# " + key + ":";
        if (!begins(lines, place, key)) {
            throw new IllegalArgumentException(name + ": line " + (place + 1) + " must begin with \"" + start + "\"");
        }
        String text = lines.get(place).substring(start.length()).strip();
        if (text.isEmpty()) {
            throw new IllegalArgumentException(name + ": " + key + " must not be blank");
        }
        return text;
    }

    /** Returns a whole column of numbers. */
    public double[] column(String column) {
        return rows.stream().mapToDouble(row -> row.number(column)).toArray();
    }

    /** Returns the names of all reference files. */
    public static List<String> names() {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("listing the reference files", e);
        }
    }
}
