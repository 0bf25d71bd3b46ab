package porebench.desk.frame.dialog;

import java.awt.Dimension;
import java.util.Comparator;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;

/** A table of problems: how grave, where in which file, and what to do. */
final class ProblemTable {
    private final JTable table;

    ProblemTable(List<Problem> problems, ProblemText problemText, Texts texts) {
        List<Problem> gravestFirst = problems.stream()
                .sorted(Comparator.comparing(problem -> !problem.isError()))
                .toList();
        long files = problems.stream()
                .flatMap(problem -> problem.place().map(Place::file).stream())
                .distinct()
                .count();
        table = new JTable(new Rows(gravestFirst, problemText, texts, columns(files)));
        table.setName("problems");
        table.setFillsViewportHeight(true);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.getColumnModel().getColumn(table.getColumnCount() - 1).setCellRenderer(new DefaultTableCellRenderer());
        for (int column = 0; column < table.getColumnCount(); column++) {
            table.getColumnModel().getColumn(column).setPreferredWidth(width(column));
        }
    }

    private static List<String> columns(long files) {
        if (files == 0) {
            return List.of("grave", "words");
        }
        return files == 1
                ? List.of("grave", "line", "column", "words")
                : List.of("grave", "file", "line", "column", "words");
    }

    private int width(int column) {
        int widest = 0;
        for (int row = 0; row < table.getRowCount(); row++) {
            widest = Math.max(
                    widest,
                    table.prepareRenderer(table.getCellRenderer(row, column), row, column)
                            .getPreferredSize()
                            .width);
        }
        int heading = table.getTableHeader()
                .getDefaultRenderer()
                .getTableCellRendererComponent(table, table.getColumnName(column), false, false, -1, column)
                .getPreferredSize()
                .width;
        return Math.max(widest, heading) + table.getRowHeight();
    }

    JComponent component() {
        JScrollPane scroll = new JScrollPane(table);
        int rows = Math.max(4, Math.min(12, table.getRowCount() + 2));
        int unit = table.getRowHeight();
        int columns = unit;
        for (int column = 0; column < table.getColumnCount(); column++) {
            columns += table.getColumnModel().getColumn(column).getPreferredWidth();
        }
        scroll.setPreferredSize(new Dimension(Math.max(18 * unit, Math.min(34 * unit, columns)), rows * unit));
        return scroll;
    }

    private static final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1L;
        private final transient List<Problem> problems;
        private final transient ProblemText problemText;
        private final transient Texts texts;
        private final transient List<String> columns;

        Rows(List<Problem> problems, ProblemText problemText, Texts texts, List<String> columns) {
            this.problems = problems;
            this.problemText = problemText;
            this.texts = texts;
            this.columns = columns;
        }

        @Override
        public int getRowCount() {
            return problems.size();
        }

        @Override
        public int getColumnCount() {
            return columns.size();
        }

        @Override
        public String getColumnName(int column) {
            return texts.get("problems." + key(column));
        }

        private String key(int column) {
            return columns.get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            Problem problem = problems.get(row);
            return switch (key(column)) {
                case "grave" -> texts.get(problem.isError() ? "problems.error" : "problems.warning");
                case "file" -> problem.place().map(Place::file).orElse("");
                case "line" -> number(problem.place().flatMap(Place::line).orElse(0));
                case "column" -> number(problem.place().flatMap(Place::column).orElse(0));
                default -> problemText.say(problem);
            };
        }

        private static String number(int counted) {
            return counted == 0 ? "" : Integer.toString(counted);
        }
    }
}
