package porebench.desk.study;

import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;

/** A table of figures to read. */
final class FigureGrid {
    private static final int TEXT_WIDTH = 130;
    private static final int LEAST_NUMBER_WIDTH = 76;
    private static final int LETTER_WIDTH = 8;

    private FigureGrid() {}

    static JComponent of(StudyShown.Table data) {
        RowTable<List<String>> table = new RowTable<>(
                "study." + data.name(),
                data.title(),
                IntStream.range(0, data.columns().size())
                        .mapToObj(at -> shown(data.columns().get(at), at))
                        .toList());
        table.show(data.rows());
        return table.scrolled();
    }

    private static ShownColumn<List<String>> shown(StudyShown.Column column, int at) {
        ShownColumn<List<String>> shown = new ShownColumn<>(column.heading(), width(column), cells -> cells.get(at));
        return column.isNumber() ? shown.number() : shown;
    }

    /** Returns how wide a column is at 100 %: its heading is not cut, and neither are most figures. */
    private static int width(StudyShown.Column column) {
        return column.isNumber()
                ? Math.max(LEAST_NUMBER_WIDTH, LETTER_WIDTH * (column.heading().length() + 2))
                : TEXT_WIDTH;
    }
}
