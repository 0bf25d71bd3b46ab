package porebench.exchange.schema;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import porebench.exchange.text.ExchangeException;

/** What {@code docs/formats.md}, which is shipped, says of each file: its words stand there and nowhere else. */
final class FormatsPage {
    private static final String PAGE = "formats.md";

    private final Map<String, Section> sections = new HashMap<>();

    /**
     * What is said of a file.
     *
     * @param about what a row of it is
     * @param columns what is said of each column, in their order
     */
    record Section(String about, Map<String, Row> columns) {
        /** Returns what is said of a column. */
        Row column(String heading) {
            Row row = columns.get(heading);
            if (row == null) {
                throw new IllegalStateException("column must be described in " + PAGE + ", but is not: " + heading);
            }
            return row;
        }
    }

    /**
     * What is said of a column.
     *
     * @param meaning what it means
     * @param allowed its unit, and what may stand there
     * @param cell whether a cell must be filled in
     */
    record Row(String meaning, String allowed, String cell) {
        /** Returns all of it. */
        String words() {
            List<String> said = new ArrayList<>(List.of(meaning));
            if (!allowed.isEmpty()) {
                said.add("Stands there: " + allowed);
            }
            if (!cell.isEmpty()) {
                said.add("Cell: " + cell);
            }
            return String.join(". ", said);
        }
    }

    private FormatsPage(String text) {
        for (String section : text.split("\n###? ", -1)) {
            int from = section.indexOf('`');
            int to = section.indexOf('`', from + 1);
            int end = section.indexOf('\n');
            if (from >= 0 && to < end) {
                sections.put(section.substring(from + 1, to), sectionOf(section.substring(end)));
            }
        }
    }

    /** Reads the page. */
    static FormatsPage read() {
        try (InputStream stream = Objects.requireNonNull(
                FormatsPage.class.getResourceAsStream(PAGE), "what is shipped holds no " + PAGE)) {
            return new FormatsPage(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new ExchangeException(ExchangeException.Task.READ, PAGE, failure);
        }
    }

    static FormatsPage of(String text) {
        return new FormatsPage(text);
    }

    /** Returns what is said of a file. */
    Section section(String file) {
        Section section = sections.get(file);
        if (section == null) {
            throw new IllegalStateException("file must be described in " + PAGE + ", but is not: " + file);
        }
        return section;
    }

    private static Section sectionOf(String text) {
        Map<String, Row> columns = new LinkedHashMap<>();
        text.lines().filter(line -> line.startsWith("| `")).forEach(line -> {
            List<String> cells =
                    Stream.of(line.split("\\|", -1)).map(FormatsPage::plain).toList();
            columns.put(cells.get(1), new Row(cells.get(2), cells.get(3), cells.get(4)));
        });
        String first = text.strip().split("\n\n", 2)[0];
        return new Section(plain(first.replaceAll("\\s+", " ")), columns);
    }

    /** Returns words without what only a page needs: marks of code, and where a link leads. */
    private static String plain(String words) {
        return words.replaceAll("\\[([^\\]]*)\\]\\([^)]*\\)", "$1")
                .replace("`", "")
                .strip();
    }
}
