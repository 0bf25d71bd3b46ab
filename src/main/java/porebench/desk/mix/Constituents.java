package porebench.desk.mix;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import porebench.desk.form.History;
import porebench.desk.form.Numbers;
import porebench.desk.form.PartWords;
import porebench.desk.form.TypedDraft;
import porebench.desk.table.PartModel;
import porebench.method.MoistureState;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.record.Source;
import porebench.record.column.Column;
import porebench.record.column.MixColumns;

/** The constituents of the draft of a mix design as a table; each step of a person can be undone by its name. */
final class Constituents implements PartModel {
    private static final Set<Column<?, ?>> OF_AGGREGATE =
            Set.of(MixColumns.STATE, MixColumns.ABSORPTION, MixColumns.MOISTURE, MixColumns.RETAINED);
    private static final Set<Column<?, ?>> NUMBERS = Set.of(
            MixColumns.MASS, MixColumns.ABSORPTION, MixColumns.MOISTURE, MixColumns.DENSITY, MixColumns.RETAINED);

    private final MixModel model;
    private final KnownSources sources;
    private final Numbers numbers;

    Constituents(MixModel model, KnownSources sources) {
        this.model = model;
        this.sources = sources;
        this.numbers = model.desk().tools().numbers();
    }

    @Override
    public Texts texts() {
        return model.texts();
    }

    @Override
    public History<TypedDraft> history() {
        return model.history();
    }

    @Override
    public List<Problem> shownProblems() {
        return model.shownProblems();
    }

    @Override
    public String key(String field) {
        return "constituent." + field;
    }

    @Override
    public String problemsUnder() {
        return MixColumns.CONSTITUENTS.field() + ".";
    }

    @Override
    public boolean isNumber(Column<?, ?> column) {
        return NUMBERS.contains(column);
    }

    /** Only aggregate has moisture and sieve sizes; what stands there for anything else can still be taken away. */
    @Override
    public boolean isEditable(int row, Column<?, ?> column) {
        if (row >= rows().size()) {
            // A table shows the rows of the draft before until it is told of another mix, which may have fewer.
            return false;
        }
        TypedDraft typed = rows().get(row);
        return !OF_AGGREGATE.contains(column)
                || typed.chosen(MixColumns.ROLE).isAggregate()
                || (column == MixColumns.STATE
                        ? typed.chosen(MixColumns.STATE) != MoistureState.SSD
                        : !typed.text(column).isEmpty());
    }

    @Override
    public String shown(int row, Column<?, ?> column, String text) {
        return column == MixColumns.STATE && !isEditable(row, column) ? "" : PartModel.super.shown(row, column, text);
    }

    /** Returns how a cell is called. */
    String cellWords(int row, TypedDraft typed, Column<?, ?> cell) {
        return texts().get("cell", rowName(row, typed), texts().get(key(cell.field()) + ".plain"));
    }

    /** Returns how constituents are called beside those of another version. */
    PartWords words() {
        return new PartWords() {
            @Override
            public String all() {
                return texts().get("section.constituents");
            }

            @Override
            public String thing(int row, TypedDraft typed) {
                return rowName(row, typed);
            }

            @Override
            public String cell(int row, TypedDraft typed, Column<?, ?> cell) {
                return cellWords(row, typed, cell);
            }

            @Override
            public String said(TypedDraft typed, Column<?, ?> cell) {
                return Constituents.this.said(typed, cell);
            }
        };
    }

    /** What only aggregate has is not said of anything else. */
    private String said(TypedDraft typed, Column<?, ?> cell) {
        String text = typed.text(cell).strip();
        boolean isSaid = !text.isEmpty()
                && (!OF_AGGREGATE.contains(cell)
                        || typed.text(MixColumns.ROLE).isEmpty()
                        || typed.chosen(MixColumns.ROLE).isAggregate());
        String choice = isSaid && !cell.type().choices().isEmpty() ? choiceWords(cell, text) : text;
        return !isSaid ? "" : cell.hasUnit() ? choice + " " + unitWords(cell, typed.unit(cell)) : choice;
    }

    private TypedDraft draft() {
        return model.draft();
    }

    private TypedDraft row(int row) {
        return rows().get(row);
    }

    @Override
    public List<TypedDraft> rows() {
        return model.rows();
    }

    /** Types into a cell or chooses in it; a mass may bring its unit along, as in {@code 1735 lb}. */
    @Override
    public void type(int row, Column<?, ?> column, String text) {
        TypedDraft before = row(row);
        if (before.text(column).equals(text)) {
            return;
        }
        TypedDraft changed = before.with(column, text);
        if (column == MixColumns.SOURCE) {
            changed = withSource(before, text.strip());
        } else if (column == MixColumns.MASS) {
            changed = changed.parted(column, numbers);
        } else if (column == MixColumns.STATE) {
            changed = withOffer(before, source(before.text(MixColumns.SOURCE)), changed);
        }
        change(row, column.field(), changed);
    }

    /** Chooses the unit of a cell; its digits stay. */
    @Override
    public void chooseUnit(int row, Column<?, ?> column, String symbol) {
        change(row, column.unitField(), row(row).withUnit(column, symbol));
    }

    private void change(int row, String field, TypedDraft changed) {
        String cell = texts().get("constituent." + field + ".plain");
        update(
                texts().get("step.cell", Integer.toString(row + 1), cell),
                draft().with(MixColumns.CONSTITUENTS, row, changed));
    }

    private TypedDraft withSource(TypedDraft before, String id) {
        TypedDraft changed = withOffer(before, source(id), before.with(MixColumns.SOURCE, id));
        return before.text(MixColumns.NAME).isBlank()
                ? changed.with(MixColumns.NAME, source(id).map(Source::name).orElse(id))
                : changed;
    }

    /** What the register offers takes the place of what it offered before; a relative density follows the basis of the mass. */
    private TypedDraft withOffer(TypedDraft before, Optional<Source> source, TypedDraft changed) {
        SourceOffer earlier =
                SourceOffer.of(source(before.text(MixColumns.SOURCE)), before.chosen(MixColumns.STATE), numbers);
        return SourceOffer.of(source, changed.chosen(MixColumns.STATE), numbers).replacing(earlier, changed);
    }

    /** Adds an empty row below another one, coarse aggregate to begin with; below none it becomes the last. */
    int addRow(int below) {
        List<TypedDraft> rows = new ArrayList<>(rows());
        int at = below < 0 || below >= rows.size() ? rows.size() : below + 1;
        rows.add(at, MixFields.row("", Role.COARSE, model.desk().units()));
        update(texts().get("step.add-row", Integer.toString(rows.size())), draft().with(MixColumns.CONSTITUENTS, rows));
        return at;
    }

    @Override
    public boolean addRow() {
        addRow(rows().size());
        return true;
    }

    void removeRow(int row) {
        List<TypedDraft> rows = new ArrayList<>(rows());
        rows.remove(row);
        update(
                texts().get("step.remove-row", Integer.toString(row + 1), rowName(row)),
                draft().with(MixColumns.CONSTITUENTS, rows));
    }

    /** Swaps a row with the one above (-1) or below (1). */
    void moveRow(int row, int by) {
        List<TypedDraft> rows = new ArrayList<>(rows());
        Collections.swap(rows, row, row + by);
        update(texts().get("step.move-row", rowName(row)), draft().with(MixColumns.CONSTITUENTS, rows));
    }

    private String rowName(int row) {
        return rowName(row, row(row));
    }

    /** Returns what a row is called, by its number as long as it has no name. */
    String rowName(int row, TypedDraft typed) {
        String name = typed.text(MixColumns.NAME).strip();
        return name.isEmpty() ? texts().get("row", Integer.toString(row + 1)) : name;
    }

    private void update(String label, TypedDraft changed) {
        history().update(label, changed);
    }

    private Optional<Source> source(String id) {
        return sources.find(id);
    }
}
