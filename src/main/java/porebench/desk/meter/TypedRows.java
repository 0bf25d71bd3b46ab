package porebench.desk.meter;

import java.util.ArrayList;
import java.util.List;
import porebench.desk.form.History;
import porebench.desk.form.PartWords;
import porebench.desk.form.TypedDraft;
import porebench.desk.table.PartModel;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.Column;
import porebench.record.column.Part;

/** One of the two tables of a calibration, with an empty row at its foot to go on in. */
final class TypedRows implements PartModel {
    private final CalibrationModel entry;
    private final Column<MeterCalibration, ?> column;
    private final Part<?> part;
    private final String what;

    /**
     * Makes the table's rows.
     *
     * @param column of which a calibration has several
     * @param what the word that leads the keys of its texts
     */
    TypedRows(CalibrationModel entry, Column<MeterCalibration, ?> column, Part<?> part, String what) {
        this.entry = entry;
        this.column = column;
        this.part = part;
        this.what = what;
    }

    private List<? extends Column<?, ?>> cells() {
        return part.columns().all();
    }

    private List<TypedDraft> typed() {
        return entry.draft().rows(column);
    }

    /** The empty row offers the unit that was chosen last. */
    private TypedDraft foot() {
        return column == CalibrationColumns.POINTS
                ? TypedDraft.BLANK.withUnit(
                        CalibrationColumns.AMOUNT, entry.draft().unit(column))
                : TypedDraft.BLANK;
    }

    @Override
    public List<TypedDraft> rows() {
        List<TypedDraft> rows = new ArrayList<>(typed());
        rows.add(foot());
        return rows;
    }

    /** Returns whether a row is the empty one to go on in. */
    boolean isFoot(int row) {
        return row == typed().size();
    }

    @Override
    public void type(int row, Column<?, ?> cell, String text) {
        change(entry.draft(), row, rows().get(row).with(cell, text));
    }

    @Override
    public void chooseUnit(int row, Column<?, ?> cell, String symbol) {
        change(entry.draft().withUnit(column, symbol), row, rows().get(row).withUnit(cell, symbol));
    }

    private void change(TypedDraft draft, int row, TypedDraft cells) {
        List<TypedDraft> rows = rows();
        rows.set(row, cells);
        update(draft, rows);
    }

    private void update(TypedDraft draft, List<TypedDraft> rows) {
        entry.update(texts().get("name." + what + "s"), draft.with(column, CalibrationFields.trimmed(rows, cells())));
    }

    void remove(int row) {
        if (row >= 0 && !isFoot(row)) {
            List<TypedDraft> fewer = new ArrayList<>(typed());
            fewer.remove(row);
            update(entry.draft(), fewer);
        }
    }

    @Override
    public Texts texts() {
        return entry.texts();
    }

    @Override
    public String key(String field) {
        return what + "." + field;
    }

    @Override
    public String problemsUnder() {
        return column.field() + ".";
    }

    @Override
    public History<TypedDraft> history() {
        return entry.history();
    }

    @Override
    public List<Problem> shownProblems() {
        return entry.shownProblems();
    }

    /** The masses of the fills have one unit for the whole table. */
    @Override
    public boolean hasUnitCell(Column<?, ?> cell) {
        return cell == CalibrationColumns.AMOUNT;
    }

    /** Returns how the rows are called beside those of another version. */
    PartWords words(String all) {
        return new PartWords() {
            @Override
            public String all() {
                return all;
            }

            @Override
            public String thing(int row, TypedDraft typed) {
                return texts().get("name.row", all, Integer.toString(row + 1));
            }

            @Override
            public String cell(int row, TypedDraft typed, Column<?, ?> cell) {
                return entry.cellWords(row, typed, cell);
            }

            @Override
            public String said(TypedDraft typed, Column<?, ?> cell) {
                String text = typed.text(cell).strip();
                return text.isEmpty() || typed.unit(cell).isEmpty()
                        ? text
                        : text + " " + unitWords(cell, typed.unit(cell));
            }
        };
    }

    @Override
    public String unitWords(Column<?, ?> cell, String symbol) {
        return texts().get("unit." + symbol);
    }
}
