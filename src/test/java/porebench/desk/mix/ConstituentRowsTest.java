package porebench.desk.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.StringSelection;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import javax.swing.TransferHandler;
import javax.swing.event.TableModelEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.MixDesk;
import porebench.desk.table.PartTable;
import porebench.desk.table.RowTable;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.record.column.Column;
import porebench.record.column.MixColumns;

/** The table of constituents: a new mix begins with cement, water, fine and coarse aggregate, in this order. */
class ConstituentRowsTest {
    private static final int CEMENT = 0;
    private static final int FINE = 2;
    /** The cell behind name, role, source and mass. */
    private static final int UNIT = 4;

    private final MixDesk desk = new MixDesk(Locale.ENGLISH);
    private final MixModel model = new MixModel(desk.desk);
    private final List<String> told = new ArrayList<>();
    private PartTable part;
    private RowTable<?> table;

    @BeforeEach
    void begin() {
        model.begin();
        part = new PartTable(
                "constituents",
                "Constituents",
                model.constituents(),
                MixColumns.OF_CONSTITUENT.all(),
                Collections.nCopies(10, 80),
                desk.desk.tools().problemText(),
                told::add);
        table = part.table();
        model.history().onChange(part::refresh);
    }

    private boolean isEditable(int row, Column<?, ?> column) {
        return table.isCellEditable(row, part.indexOf(column.field()));
    }

    private void set(int row, Column<?, ?> column, Object value) {
        table.setValueAt(value, row, part.indexOf(column.field()));
    }

    private Object at(int row, Column<?, ?> column) {
        return table.getValueAt(row, part.indexOf(column.field()));
    }

    @Test
    void everyColumnHasAHeadingOfItsOwn() {
        List<String> headings = new ArrayList<>();
        for (int column = 0; column < table.getColumnCount(); column++) {
            headings.add(table.getColumnName(column));
        }
        assertThat(headings).hasSize(10).doesNotHaveDuplicates().first().isEqualTo("Constituent");
    }

    @Test
    void onlyAggregateHasMoistureAndSieveSizes() {
        for (Column<?, ?> column :
                List.of(MixColumns.STATE, MixColumns.ABSORPTION, MixColumns.MOISTURE, MixColumns.RETAINED)) {
            assertThat(isEditable(FINE, column)).as("%s of sand", column).isTrue();
            assertThat(isEditable(CEMENT, column)).as("%s of cement", column).isFalse();
        }
        for (Column<?, ?> column : List.of(MixColumns.NAME, MixColumns.ROLE, MixColumns.MASS)) {
            assertThat(isEditable(CEMENT, column)).as("%s of cement", column).isTrue();
        }
    }

    /** Somebody typed them for sand and then called it cement. */
    @Test
    void whatAnotherRoleLeftBehindCanStillBeTakenAway() {
        for (Column<?, ?> column : List.of(MixColumns.ABSORPTION, MixColumns.MOISTURE, MixColumns.RETAINED)) {
            set(FINE, column, "1.5");
        }
        set(FINE, MixColumns.STATE, MoistureState.OVEN_DRY.symbol());
        set(FINE, MixColumns.ROLE, Role.CEMENT.symbol());
        assertThat(at(FINE, MixColumns.ROLE)).isEqualTo(Role.CEMENT.symbol());
        for (Column<?, ?> column : List.of(MixColumns.ABSORPTION, MixColumns.MOISTURE, MixColumns.RETAINED)) {
            assertThat(isEditable(FINE, column)).as("%s with text", column).isTrue();
            set(FINE, column, "");
            assertThat(isEditable(FINE, column)).as("%s without text", column).isFalse();
        }
        assertThat(isEditable(FINE, MixColumns.STATE)).isTrue();
        set(FINE, MixColumns.STATE, MoistureState.SSD.symbol());
        assertThat(isEditable(FINE, MixColumns.STATE)).isFalse();
    }

    @Test
    void whatIsTypedOrChosenStandsInItsOwnCellAndNoOther() {
        set(FINE, MixColumns.MASS, "700.50");
        table.setValueAt("lb", FINE, UNIT);
        set(FINE, MixColumns.STATE, MoistureState.STOCK.symbol());
        assertThat(at(FINE, MixColumns.MASS)).isEqualTo("700.50");
        assertThat(table.getValueAt(FINE, UNIT)).isEqualTo("lb");
        assertThat(at(FINE, MixColumns.STATE)).isEqualTo(MoistureState.STOCK.symbol());
        assertThat(at(FINE + 1, MixColumns.MASS)).isEqualTo("");
        assertThat(table.getValueAt(FINE + 1, UNIT)).isEqualTo("kg");
        assertThat(at(FINE + 1, MixColumns.STATE)).isEqualTo(MoistureState.SSD.symbol());
    }

    /** A block from a spreadsheet that is longer than the table, one of its roles in a word that is none. */
    @Test
    void whatIsPastedGetsRowsOfItsOwnInOneStepAndWhatIsNoRoleIsTold() {
        String fine = model.constituents().choiceWords(MixColumns.ROLE, Role.FINE.symbol());
        table.changeSelection(FINE + 1, 0, false, false);
        String block =
                "Ledge stone\tboulder\t\t950\tkg\nPit sand\t" + fine + "\t\t410\tkg\nFiller\t" + fine + "\t\t55\tlb\n";
        assertThat(table.getTransferHandler()
                        .importData(new TransferHandler.TransferSupport(table, new StringSelection(block))))
                .isTrue();
        assertThat(table.getRowCount()).isEqualTo(6);
        assertThat(List.of(at(3, MixColumns.NAME), at(4, MixColumns.NAME), at(5, MixColumns.NAME)))
                .isEqualTo(List.of("Ledge stone", "Pit sand", "Filler"));
        assertThat(List.of(at(3, MixColumns.ROLE), at(4, MixColumns.ROLE)))
                .isEqualTo(List.of(Role.COARSE.symbol(), Role.FINE.symbol()));
        assertThat(List.of(at(4, MixColumns.MASS), table.getValueAt(5, UNIT))).isEqualTo(List.of("410", "lb"));
        assertThat(told)
                .singleElement()
                .asString()
                .contains("could not be pasted")
                .endsWith("boulder");
        model.history().undo();
        assertThat(table.getRowCount()).isEqualTo(4);
        assertThat(model.history().isChanged()).isFalse();
    }

    /** An editor that closes after its row was removed. */
    @Test
    void aCellThatIsGoneTakesNothing() {
        set(table.getRowCount(), MixColumns.MASS, "700");
        set(CEMENT, MixColumns.ROLE, "no role");
        assertThat(at(CEMENT, MixColumns.ROLE)).isEqualTo(Role.CEMENT.symbol());
        assertThat(model.history().isChanged()).isFalse();
    }

    @Test
    void anEditorStaysOpenWhileTheRowsAreTheSame() {
        List<TableModelEvent> events = new ArrayList<>();
        table.getModel().addTableModelListener(events::add);
        set(FINE, MixColumns.MASS, "700");
        assertThat(events).singleElement().satisfies(event -> {
            assertThat(event.getFirstRow()).isZero();
            assertThat(event.getLastRow()).isEqualTo(3);
        });
        model.constituents().removeRow(CEMENT);
        assertThat(table.getRowCount()).isEqualTo(3);
        assertThat(events)
                .hasSize(2)
                .last()
                .satisfies(event -> assertThat(event.getLastRow()).isEqualTo(Integer.MAX_VALUE));
        assertThat(model.rows().get(FINE - 1).text(MixColumns.MASS)).isEqualTo("700");
    }

    @Test
    void anEmptyTableTellsOfNoRow() {
        while (table.getRowCount() > 0) {
            model.constituents().removeRow(0);
        }
        List<TableModelEvent> events = new ArrayList<>();
        table.getModel().addTableModelListener(events::add);
        part.refresh();
        assertThat(events).isEmpty();
    }

    /** From a spreadsheet: mass, unit and state as they are said there. */
    @Test
    void whatIsPastedIsOneStepAndAChoiceIsKnownByItsWords() {
        table.changeSelection(FINE, part.indexOf(MixColumns.MASS.field()), false, false);
        boolean isTaken = table.getTransferHandler()
                .importData(new TransferHandler.TransferSupport(
                        table, new StringSelection("700.5\tlb\tOven-dry\n1050\tlb\tno state")));
        assertThat(isTaken).isTrue();
        assertThat(at(FINE, MixColumns.MASS)).isEqualTo("700.5");
        assertThat(table.getValueAt(FINE, UNIT)).isEqualTo("lb");
        assertThat(at(FINE, MixColumns.STATE)).isEqualTo(MoistureState.OVEN_DRY.symbol());
        assertThat(at(FINE + 1, MixColumns.MASS)).isEqualTo("1050");
        assertThat(at(FINE + 1, MixColumns.STATE)).isEqualTo(MoistureState.SSD.symbol());
        assertThat(model.history().undoLabel()).contains("Paste");
        model.history().undo();
        assertThat(model.history().isChanged()).isFalse();
        assertThat(model.history().undoLabel()).isEmpty();
    }
}
