package porebench.desk;

import java.util.List;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import porebench.evidence.intake.Sheet;
import porebench.record.Kept;
import porebench.record.book.Draft;

/** The one way in which sheets come into the lab book, with its preview: for pages that offer it beside the menu. */
@FunctionalInterface
public interface SheetImport {
    /**
     * Asks for sheets and brings in what is taken of them, after a person has seen it.
     *
     * @param over what dialogs stand over
     * @param taking what is taken
     */
    void choose(JComponent over, Taking taking);

    /**
     * Brings in what was read of rows that a person pasted, after they have seen it.
     *
     * @param over what dialogs stand over
     * @param pasted the rows
     */
    default void take(JComponent over, Sheet<Kept> pasted) {
        throw new IllegalStateException("rows must be pasted where they can be brought in");
    }

    /**
     * What is taken of sheets.
     *
     * @param rows leaves out of a sheet what is not taken, with a problem at its place
     * @param drafts gives what is to be kept its last form
     */
    record Taking(UnaryOperator<Sheet<Kept>> rows, UnaryOperator<List<Draft>> drafts) {
        /** All that stands in the sheets, as it stands there. */
        public static final Taking ALL = new Taking(UnaryOperator.identity(), UnaryOperator.identity());
    }
}
