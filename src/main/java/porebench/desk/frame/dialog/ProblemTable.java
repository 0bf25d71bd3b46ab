package porebench.desk.frame.dialog;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import porebench.desk.form.Commands;
import porebench.desk.manual.ManualLink;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;

/** A table of problems: how grave, where in which file, and what to do. */
final class ProblemTable {

    private final RowTable<Problem> table;

    ProblemTable(List<Problem> problems, ProblemText problemText, Texts texts) {
        this(problems, problemText, texts, 0);
    }

    /**
     * Shows problems.
     *
     * @param read how many files were read; of more than one each problem says which it is in, also where only one has any
     */
    ProblemTable(List<Problem> problems, ProblemText problemText, Texts texts, int read) {
        long files = problems.stream()
                .flatMap(problem -> problem.place().map(Place::file).stream())
                .distinct()
                .count();
        List<ShownColumn<Problem>> columns = new ArrayList<>();
        columns.add(new ShownColumn<>(
                texts.get("problems.grave"),
                0,
                problem -> texts.get(problem.isError() ? "problems.error" : "problems.warning")));
        if (files > 1 || read > 1) {
            columns.add(new ShownColumn<>(
                    texts.get("problems.file"),
                    0,
                    problem -> problem.place().map(Place::file).orElse("")));
        }
        if (files > 0) {
            columns.add(counted(texts.get("problems.line"), Place::line));
            columns.add(counted(texts.get("problems.column"), Place::column));
        }
        columns.add(new ShownColumn<>(texts.get("problems.words"), 0, problemText::say));
        table = new RowTable<>("problems", texts.get("problems.words"), columns);
        table.show(problems.stream()
                .sorted(Comparator.comparing(problem -> !problem.isError()))
                .toList());
        table.fitColumns();
        // F1 on a line opens what the manual says of it.
        table.getInputMap().put(KeyStroke.getKeyStroke("F1"), "manual");
        table.getActionMap()
                .put(
                        "manual",
                        Commands.of("", () -> table.selected().ifPresent(problem -> ManualLink.open(table, problem))));
    }

    /** Returns a column of what is counted from 1 in a file; nothing where that is not known. */
    private static ShownColumn<Problem> counted(String heading, Function<Place, Optional<Integer>> place) {
        return new ShownColumn<>(
                heading,
                0,
                problem -> problem.place().flatMap(place).map(Object::toString).orElse(""));
    }

    JComponent component() {
        JScrollPane scroll = table.scrolled();
        int rows = Math.max(4, Math.min(12, table.getRowCount() + 2));
        int unit = table.getRowHeight();
        int columns = unit + table.getColumnModel().getTotalColumnWidth();
        scroll.setPreferredSize(new Dimension(Math.max(18 * unit, Math.min(34 * unit, columns)), rows * unit));
        return scroll;
    }
}
