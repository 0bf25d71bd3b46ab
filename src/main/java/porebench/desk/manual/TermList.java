package porebench.desk.manual;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The table of the trade's words in all languages, made from the terminology table. */
final class TermList {
    private static final Set<String> LANGUAGES = Set.of("en", "es-419", "es-ES", "fr", "de");

    private TermList() {}

    /**
     * Returns the glossary in Markdown: each concept in all languages and how it is known, sorted by the reader's language.
     *
     * @param csv the terminology table: a line of names, then a line a concept; lines that begin with # are remarks
     */
    static String of(String csv, Locale locale) {
        List<List<String>> rows = csv.lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .map(TermList::cells)
                .toList();
        if (rows.isEmpty()) {
            return "";
        }
        List<String> heading = rows.get(0);
        List<Integer> shown = IntStream.range(0, heading.size())
                .filter(column -> LANGUAGES.contains(heading.get(column)))
                .boxed()
                .toList();
        int known = heading.indexOf("known");
        int by = heading.indexOf(columnOf(locale, heading));
        StringBuilder table = new StringBuilder(row(Stream.concat(
                        shown.stream().map(column -> languageName(heading.get(column))),
                        known < 0 ? Stream.empty() : Stream.of(""))
                .toList()));
        table.append("|---".repeat(shown.size() + (known < 0 ? 0 : 1))).append("|\n");
        rows.stream()
                .skip(1)
                .sorted(Comparator.comparing(row -> MarkdownText.plain(cell(row, by))))
                .map(row -> row(Stream.concat(
                                shown.stream().map(column -> cell(row, column)),
                                known < 0
                                        ? Stream.empty()
                                        : Stream.of(cell(row, known).replaceFirst("[ ,;:(].*", "")))
                        .toList()))
                .forEach(table::append);
        return table.append('\n').toString();
    }

    private static String languageName(String tag) {
        Locale language = Locale.forLanguageTag(tag);
        return language.getDisplayName(language);
    }

    private static String columnOf(Locale locale, List<String> heading) {
        if (locale.getLanguage().equals("es")) {
            return locale.getCountry().equals("ES") ? "es-ES" : "es-419";
        }
        return heading.stream()
                .filter(name -> name.equals(locale.getLanguage() + "-" + locale.getCountry())
                        || name.equals(locale.toLanguageTag()))
                .findFirst()
                .or(() -> heading.stream()
                        .filter(name -> name.equals(locale.getLanguage()))
                        .findFirst())
                .orElse("en");
    }

    private static String cell(List<String> row, int index) {
        return index < row.size() ? row.get(index) : "";
    }

    private static String row(List<String> cells) {
        StringBuilder row = new StringBuilder("|");
        cells.forEach(cell -> row.append(' ').append(MarkdownText.escaped(cell)).append(" |"));
        return row.append('\n').toString();
    }

    /** Returns the cells of a line; one in quotes may hold commas, and quotes twice. */
    static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int at = 0; at < line.length(); at++) {
            char sign = line.charAt(at);
            if (sign == '"') {
                boolean isTwice = quoted && at + 1 < line.length() && line.charAt(at + 1) == '"';
                if (isTwice) {
                    cell.append('"');
                    at++;
                } else {
                    quoted = !quoted;
                }
            } else if (sign == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(sign);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
