package porebench.command;

import java.util.ArrayList;
import java.util.List;

/** A page of text for people: lines, rows of label, value and unit, and tables, their columns aligned. */
final class TextPage {
    private static final String GAP = "  ";

    private final List<String> lines = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    /** Adds a line as it is. */
    void line(String text) {
        endRows();
        lines.add(text);
    }

    /** Adds an empty line, unless the page begins here. */
    void gap() {
        endRows();
        if (!lines.isEmpty()) {
            lines.add("");
        }
    }

    /** Adds a label with its value and unit, aligned with the rows next to it. */
    void row(String label, String value, String unit) {
        rows.add(List.of(label, value, unit));
    }

    /** Adds a table; a column whose cells are all numbers is aligned to the right. */
    void table(List<String> heads, List<List<String>> cells) {
        endRows();
        List<List<String>> all = new ArrayList<>();
        all.add(heads);
        all.addAll(cells);
        boolean[] right = new boolean[heads.size()];
        for (int column = 0; column < right.length; column++) {
            int c = column;
            right[column] =
                    !cells.isEmpty() && cells.stream().allMatch(row -> isNumber(row.get(c)));
        }
        align(all, right);
    }

    /** Returns the lines of the page. */
    List<String> lines() {
        endRows();
        return List.copyOf(lines);
    }

    private void endRows() {
        if (!rows.isEmpty()) {
            align(List.copyOf(rows), new boolean[] {false, rows.stream().allMatch(row -> isNumber(row.get(1))), false});
            rows.clear();
        }
    }

    private void align(List<List<String>> cells, boolean[] right) {
        int[] widths = new int[right.length];
        for (List<String> row : cells) {
            for (int column = 0; column < widths.length; column++) {
                widths[column] = Math.max(widths[column], row.get(column).length());
            }
        }
        for (List<String> row : cells) {
            StringBuilder text = new StringBuilder();
            for (int column = 0; column < widths.length; column++) {
                String blank = " ".repeat(widths[column] - row.get(column).length());
                text.append(column == 0 ? "" : GAP)
                        .append(right[column] ? blank + row.get(column) : row.get(column) + blank);
            }
            lines.add(text.toString().stripTrailing());
        }
    }

    private static boolean isNumber(String cell) {
        return cell.equals(Shown.NONE) || cell.matches("[-+\u2212]?\\p{Nd}[\\p{Nd}.,]*");
    }
}
