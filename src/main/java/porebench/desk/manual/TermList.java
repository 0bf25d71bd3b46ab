package porebench.desk.manual;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The table of the trade's words in all languages, made from the terminology table. */
final class TermList {
    private TermList() {}

    /**
     * Returns the glossary in Markdown: the columns of the terminology table as they stand, sorted by the reader's language.
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
        int by = Math.max(0, heading.indexOf(columnOf(locale, heading)));
        StringBuilder table = new StringBuilder(row(heading));
        table.append("|---".repeat(heading.size())).append("|\n");
        rows.stream()
                .skip(1)
                .sorted((one, other) -> MarkdownText.plain(cell(one, by)).compareTo(MarkdownText.plain(cell(other, by))))
                .map(TermList::row)
                .forEach(table::append);
        return table.append('\n').toString();
    }

    private static String columnOf(Locale locale, List<String> heading) {
        return heading.stream()
                .filter(name -> name.equals(locale.getLanguage() + "-" + locale.getCountry())
                        || name.equals(locale.toLanguageTag()))
                .findFirst()
                .or(() -> heading.stream().filter(name -> name.equals(locale.getLanguage())).findFirst())
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
