package porebench.desk.table;

import java.util.List;
import porebench.desk.form.History;
import porebench.desk.form.TypedDraft;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.column.Column;

/**
 * What a record has several of, as a table to type in shows it, and the words of its columns.
 *
 * <p>The bundle has the heading of each column under the key of the column, what it means under {@code .tip} where that need
 * be said, and of one with choices each by its symbol. The unit of a column with a unit of its own has the same.
 */
public interface PartModel {
    /** Returns the rows as they are typed. */
    List<TypedDraft> rows();

    /** Takes what was typed or chosen in a cell. */
    void type(int row, Column<?, ?> column, String text);

    /** Takes the unit that was chosen in a row. */
    void chooseUnit(int row, Column<?, ?> column, String symbol);

    /** Returns the words of the table. */
    Texts texts();

    /** Returns the key of the texts of a column, or of its unit, by its field. */
    String key(String field);

    /** Returns what leads the fields of its problems, such as {@code constituents.}; row and column follow. */
    String problemsUnder();

    /** Returns what there is to say by now about the page. */
    List<Problem> shownProblems();

    /** Returns the steps of the draft, of which what is pasted becomes one. */
    History<TypedDraft> history();

    /** Adds an empty row behind the last for what is pasted, and returns whether it did. */
    default boolean addRow() {
        return false;
    }

    /** Returns whether a cell can be typed in. */
    default boolean isEditable(int row, Column<?, ?> column) {
        return true;
    }

    /** Returns whether a column holds numbers, which stand to the right. */
    default boolean isNumber(Column<?, ?> column) {
        return column.type().choices().isEmpty();
    }

    /** Returns whether the unit of a column stands in a cell of its own. */
    default boolean hasUnitCell(Column<?, ?> column) {
        return column.hasUnit();
    }

    /** Returns a choice of a cell in words. */
    default String choiceWords(Column<?, ?> column, String symbol) {
        return texts().get(key(column.field()) + "." + symbol);
    }

    /** Returns how a unit is written. */
    default String unitWords(Column<?, ?> column, String symbol) {
        return symbol;
    }

    /** Returns what a cell shows of its text. */
    default String shown(int row, Column<?, ?> column, String text) {
        return column.type().choices().isEmpty() || text.isEmpty() ? text : choiceWords(column, text);
    }
}
