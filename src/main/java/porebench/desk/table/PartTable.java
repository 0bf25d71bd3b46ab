package porebench.desk.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.DefaultCellEditor;
import javax.swing.table.TableCellEditor;
import porebench.desk.form.Choices;
import porebench.desk.form.TypedDraft;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.record.column.Column;

/**
 * A table of what a record has several of: a cell a column, and one more where a unit stands for itself; typed in place, its
 * choices by boxes, its problems marked in their cells.
 */
public final class PartTable {
    private final PartModel model;
    private final List<Cell> cells = new ArrayList<>();
    private final RowTable<PartRow> table;

    /**
     * One of the things that a record has several of.
     *
     * @param at where it stands among them, counted from 0
     * @param typed what is typed of it
     */
    record PartRow(int at, TypedDraft typed) {}

    /** A column of the table: a column of the record, or the unit beside it. */
    private record Cell(Column<?, ?> column, boolean isUnit) {
        String field() {
            return isUnit ? column.unitField() : column.field();
        }

        /** Returns what is chosen from; none where it is typed. */
        List<String> choices() {
            return isUnit ? column.type().units() : column.type().choices();
        }

        String text(TypedDraft row) {
            return isUnit ? row.unit(column) : row.text(column);
        }
    }

    /**
     * Makes the table.
     *
     * @param title what it is called to those who hear it read
     * @param widths of its columns at 100 %, in pixels
     * @param told gets the words about what could not be pasted
     */
    public PartTable(
            String name,
            String title,
            PartModel model,
            List<? extends Column<?, ?>> columns,
            List<Integer> widths,
            ProblemText problemText,
            Consumer<String> told) {
        this.model = model;
        columns.forEach(column -> {
            cells.add(new Cell(column, false));
            if (model.hasUnitCell(column)) {
                cells.add(new Cell(column, true));
            }
        });
        table = new RowTable<>(
                name,
                title,
                IntStream.range(0, cells.size())
                        .mapToObj(at -> shown(cells.get(at), widths.get(at), problemText))
                        .toList());
        Texts words = Texts.of("porebench.desk.table.table", model.texts().locale());
        table.pasteBy(
                pasting -> model.history().together(words.get("step.paste"), pasting),
                model::addRow,
                left -> told.accept(words.get("paste.left", String.join(", ", left))));
        refresh();
    }

    private ShownColumn<PartRow> shown(Cell cell, int width, ProblemText problemText) {
        String key = model.key(cell.field());
        ShownColumn<PartRow> shown = new ShownColumn<PartRow>(model.texts().get(key), width, row -> words(cell, row))
                .tip(model.texts().find(key + ".tip").orElse(""))
                .edited(row -> isOpen(cell, row), row -> cell.text(row.typed()), (row, text) -> take(cell, row, text))
                .problems(
                        row -> {
                            String field = model.problemsUnder() + row.at() + "." + cell.field();
                            return model.shownProblems().stream()
                                    .filter(problem -> problem.field().equals(field))
                                    .toList();
                        },
                        problemText);
        if (!cell.choices().isEmpty()) {
            shown.editor(new DefaultCellEditor(
                    Choices.of(cell.field(), cell.choices(), symbol -> choice(cell, symbol), symbol -> {})));
        }
        return !cell.isUnit() && model.isNumber(cell.column()) ? shown.number() : shown;
    }

    private String choice(Cell cell, String symbol) {
        return cell.isUnit() ? model.unitWords(cell.column(), symbol) : model.choiceWords(cell.column(), symbol);
    }

    private String words(Cell cell, PartRow row) {
        String text = cell.text(row.typed());
        return cell.isUnit() ? choice(cell, text) : model.shown(row.at(), cell.column(), text);
    }

    private boolean isOpen(Cell cell, PartRow row) {
        return cell.isUnit() || model.isEditable(row.at(), cell.column());
    }

    /** Takes what was typed or pasted, a choice by its symbol or by its words, and returns whether it did. */
    private boolean take(Cell cell, PartRow row, String typed) {
        String text = cell.choices().stream()
                .filter(symbol ->
                        !cell.choices().contains(typed) && choice(cell, symbol).equalsIgnoreCase(typed))
                .findFirst()
                .orElse(typed);
        if (!cell.choices().isEmpty() && !cell.choices().contains(text)) {
            return false;
        }
        if (cell.isUnit()) {
            model.chooseUnit(row.at(), cell.column(), text);
        } else {
            model.type(row.at(), cell.column(), text);
        }
        return true;
    }

    /** Returns the table itself. */
    public RowTable<?> table() {
        return table;
    }

    /** Lets the cells of a column, by its field, be typed in with something else than a plain field. */
    public void edit(Column<?, ?> column, TableCellEditor editor) {
        table.getColumnModel().getColumn(indexOf(column.field())).setCellEditor(editor);
    }

    /** Returns where a column stands, by its field or that of its unit. */
    public int indexOf(String field) {
        return cells.stream().map(Cell::field).toList().indexOf(field);
    }

    /** Shows the draft as it is; a cell being typed in stays open unless rows go. */
    public void refresh() {
        List<TypedDraft> rows = model.rows();
        table.show(IntStream.range(0, rows.size())
                .mapToObj(at -> new PartRow(at, rows.get(at)))
                .toList());
        table.repaint();
    }
}
