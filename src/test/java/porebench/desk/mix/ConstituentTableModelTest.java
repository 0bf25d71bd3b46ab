package porebench.desk.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.event.TableModelEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.MixDesk;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.quantity.MassUnit;

/** The table of constituents: a new mix begins with cement, water, fine and coarse aggregate, in this order. */
class ConstituentTableModelTest {
    private static final int CEMENT = 0;
    private static final int FINE = 2;

    private final MixModel model = new MixModel(new MixDesk(Locale.ENGLISH).desk);
    private ConstituentTableModel table;

    @BeforeEach
    void begin() {
        model.begin();
        table = new ConstituentTableModel(model);
    }

    private boolean isEditable(int row, MixColumn column) {
        return table.isCellEditable(row, column.ordinal());
    }

    private void set(int row, MixColumn column, Object value) {
        table.setValueAt(value, row, column.ordinal());
    }

    private Object at(int row, MixColumn column) {
        return table.getValueAt(row, column.ordinal());
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
        for (MixColumn column :
                List.of(MixColumn.STATE, MixColumn.ABSORPTION, MixColumn.MOISTURE, MixColumn.RETAINED)) {
            assertThat(isEditable(FINE, column)).as("%s of sand", column).isTrue();
            assertThat(isEditable(CEMENT, column)).as("%s of cement", column).isFalse();
        }
        for (MixColumn column : List.of(MixColumn.NAME, MixColumn.ROLE, MixColumn.MASS, MixColumn.MASS_UNIT)) {
            assertThat(isEditable(CEMENT, column)).as("%s of cement", column).isTrue();
        }
    }

    /** Somebody typed them for sand and then called it cement. */
    @Test
    void whatAnotherRoleLeftBehindCanStillBeTakenAway() {
        for (MixColumn column : List.of(MixColumn.ABSORPTION, MixColumn.MOISTURE, MixColumn.RETAINED)) {
            set(FINE, column, "1.5");
        }
        set(FINE, MixColumn.STATE, MoistureState.OVEN_DRY);
        set(FINE, MixColumn.ROLE, Role.CEMENT);
        assertThat(at(FINE, MixColumn.ROLE)).isEqualTo(Role.CEMENT);
        for (MixColumn column : List.of(MixColumn.ABSORPTION, MixColumn.MOISTURE, MixColumn.RETAINED)) {
            assertThat(isEditable(FINE, column)).as("%s with text", column).isTrue();
            set(FINE, column, "");
            assertThat(isEditable(FINE, column)).as("%s without text", column).isFalse();
        }
        assertThat(isEditable(FINE, MixColumn.STATE)).isTrue();
        set(FINE, MixColumn.STATE, MoistureState.SSD);
        assertThat(isEditable(FINE, MixColumn.STATE)).isFalse();
    }

    @Test
    void whatIsTypedOrChosenStandsInItsOwnCellAndNoOther() {
        set(FINE, MixColumn.MASS, "700.50");
        set(FINE, MixColumn.MASS_UNIT, MassUnit.POUND);
        set(FINE, MixColumn.STATE, MoistureState.STOCK);
        assertThat(at(FINE, MixColumn.MASS)).isEqualTo("700.50");
        assertThat(at(FINE, MixColumn.MASS_UNIT)).isEqualTo(MassUnit.POUND);
        assertThat(at(FINE, MixColumn.STATE)).isEqualTo(MoistureState.STOCK);
        assertThat(at(FINE + 1, MixColumn.MASS)).isEqualTo("");
        assertThat(at(FINE + 1, MixColumn.MASS_UNIT)).isEqualTo(MassUnit.KILOGRAM);
        assertThat(at(FINE + 1, MixColumn.STATE)).isEqualTo(MoistureState.SSD);
    }

    /** An editor that closes after its row was removed. */
    @Test
    void aCellThatIsGoneTakesNothing() {
        set(table.getRowCount(), MixColumn.MASS, "700");
        set(CEMENT, MixColumn.ROLE, "no role");
        assertThat(at(CEMENT, MixColumn.ROLE)).isEqualTo(Role.CEMENT);
        assertThat(model.history().isChanged()).isFalse();
    }

    @Test
    void anEditorStaysOpenWhileTheRowsAreTheSame() {
        List<TableModelEvent> events = new ArrayList<>();
        table.addTableModelListener(events::add);
        set(FINE, MixColumn.MASS, "700");
        table.draftChanged();
        assertThat(events).singleElement().satisfies(event -> {
            assertThat(event.getFirstRow()).isZero();
            assertThat(event.getLastRow()).isEqualTo(3);
        });
        model.steps().removeRow(CEMENT);
        table.draftChanged();
        assertThat(table.getRowCount()).isEqualTo(3);
        assertThat(events)
                .hasSize(2)
                .last()
                .satisfies(event -> assertThat(event.getLastRow()).isEqualTo(Integer.MAX_VALUE));
        assertThat(table.row(FINE - 1).text(MixColumn.MASS)).isEqualTo("700");
    }

    @Test
    void anEmptyTableTellsOfNoRow() {
        while (table.getRowCount() > 0) {
            model.steps().removeRow(0);
        }
        table.draftChanged();
        List<TableModelEvent> events = new ArrayList<>();
        table.addTableModelListener(events::add);
        table.draftChanged();
        assertThat(events).isEmpty();
    }
}
