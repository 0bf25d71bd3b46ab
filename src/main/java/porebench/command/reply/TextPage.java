package porebench.command.reply;

import java.util.ArrayList;
import java.util.List;

/** A page of text for people: lines, rows of label, value and unit, and tables, their columns aligned. */
public final class TextPage {
    private static final String GAP = "  ";
    private static final String SIGNS = "-+\u2212";

    private final List<String> lines = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    /** Adds a line as it is. */
    public void line(String text) {
        endRows();
        lines.add(text);
    }

    /** Adds an empty line, unless the page begins here or there is one already. */
    public void gap() {
        endRows();
        if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
            lines.add("");
        }
    }

    /** Adds a label with its value and unit, aligned with the rows next to it. */
    public void row(String label, String value, String unit) {
        rows.add(List.of(label, value, unit));
    }

    /** Adds a table; a column whose cells are all numbers is aligned at the point. */
    public void table(List<String> heads, List<List<String>> cells) {
        endRows();
        List<List<String>> all = new ArrayList<>();
        all.add(heads);
        all.addAll(cells);
        boolean[] numbers = new boolean[heads.size()];
        for (int column = 0; column < numbers.length; column++) {
            int c = column;
            numbers[column] = !cells.isEmpty() && cells.stream().allMatch(row -> isNumber(row.get(c)));
        }
        align(all, numbers);
    }

    /** Returns the lines of the page. */
    public List<String> lines() {
        endRows();
        return List.copyOf(lines);
    }

    private void endRows() {
        if (!rows.isEmpty()) {
            align(List.copyOf(rows), new boolean[] {false, rows.stream().allMatch(row -> isNumber(row.get(1))), false});
            rows.clear();
        }
    }

    private void align(List<List<String>> cells, boolean[] numbers) {
        List<List<String>> columns = new ArrayList<>();
        for (int column = 0; column < numbers.length; column++) {
            int c = column;
            List<String> texts = cells.stream().map(row -> row.get(c)).toList();
            columns.add(numbers[column] ? toTheRight(underOnePoint(texts)) : toTheLeft(texts));
        }
        for (int row = 0; row < cells.size(); row++) {
            StringBuilder line = new StringBuilder(columns.get(0).get(row));
            for (int column = 1; column < columns.size(); column++) {
                line.append(GAP).append(columns.get(column).get(row));
            }
            lines.add(line.toString().stripTrailing());
        }
    }

    /** Brings the decimal points of numbers under each other; a heading stays as it is. */
    private static List<String> underOnePoint(List<String> texts) {
        int most = texts.stream()
                .filter(TextPage::isNumber)
                .mapToInt(TextPage::decimals)
                .max()
                .orElse(0);
        return texts.stream()
                .map(text -> isNumber(text) ? text + " ".repeat(most - decimals(text)) : text)
                .toList();
    }

    /** Returns how many characters stand from the decimal sign on. */
    private static int decimals(String number) {
        int point = Math.max(number.lastIndexOf('.'), number.lastIndexOf(','));
        return point < 0 ? 0 : number.length() - point;
    }

    private static List<String> toTheRight(List<String> texts) {
        int width = width(texts);
        return texts.stream()
                .map(text -> " ".repeat(width - text.length()) + text)
                .toList();
    }

    private static List<String> toTheLeft(List<String> texts) {
        int width = width(texts);
        return texts.stream()
                .map(text -> text + " ".repeat(width - text.length()))
                .toList();
    }

    private static int width(List<String> texts) {
        return texts.stream().mapToInt(String::length).max().orElse(0);
    }

    /** Returns whether a cell is a number: perhaps a sign, then digits of any script, points and commas after the first. */
    private static boolean isNumber(String cell) {
        if (cell.equals(NumberText.NONE)) {
            return true;
        }
        int first = !cell.isEmpty() && SIGNS.indexOf(cell.charAt(0)) >= 0 ? 1 : 0;
        if (first == cell.length() || !Character.isDigit(cell.charAt(first))) {
            return false;
        }
        for (int i = first + 1; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (!Character.isDigit(c) && c != '.' && c != ',') {
                return false;
            }
        }
        return true;
    }
}
