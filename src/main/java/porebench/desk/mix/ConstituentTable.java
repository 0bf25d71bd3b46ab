package porebench.desk.mix;

import java.awt.Component;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.table.JTableHeader;
import porebench.desk.form.Choices;
import porebench.desk.form.WideTable;
import porebench.method.MoistureState;
import porebench.method.ProblemText;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.quantity.MassUnit;

/** The table of constituents: typed in place, its choices by boxes, its problems marked in their cells. */
final class ConstituentTable extends WideTable {
    private static final long serialVersionUID = 1L;
    private static final int[] WIDTHS = {150, 104, 88, 74, 50, 86, 80, 76, 84, 80};

    private final transient MixModel model;
    private final transient Texts texts;

    ConstituentTable(MixModel model, ConstituentTableModel rows, ProblemText problemText) {
        super("constituents", rows);
        this.model = model;
        this.texts = model.texts();
        setRowSelectionAllowed(true);
        setCellSelectionEnabled(true);
        getAccessibleContext().setAccessibleName(texts.get("section.constituents"));
        ConstituentCell cell = new ConstituentCell(model, problemText);
        for (MixColumn column : MixColumn.values()) {
            setColumn(column.ordinal(), WIDTHS[column.ordinal()], column.isNumber());
            getColumnModel().getColumn(column.ordinal()).setCellRenderer(cell);
        }
        chooseBy(MixColumn.ROLE, Choices.of("role", List.of(Role.values()), this::say, role -> {}));
        chooseBy(MixColumn.MASS_UNIT, Choices.ofUnits("massUnit", List.of(MassUnit.values()), unit -> {}));
        chooseBy(MixColumn.STATE, Choices.of("massState", List.of(MoistureState.values()), this::say, state -> {}));
        getColumnModel().getColumn(MixColumn.SOURCE.ordinal()).setCellEditor(new SourceEditor(model));
    }

    private String say(Role role) {
        return texts.get("role." + role.symbol());
    }

    private String say(MoistureState state) {
        return texts.get("massState." + state.symbol());
    }

    private void chooseBy(MixColumn column, JComboBox<?> box) {
        getColumnModel().getColumn(column.ordinal()).setCellEditor(new DefaultCellEditor(box));
    }

    @Override
    protected JTableHeader createDefaultTableHeader() {
        return new JTableHeader(getColumnModel()) {
            private static final long serialVersionUID = 1L;

            @Override
            public String getToolTipText(MouseEvent event) {
                int column = columnAtPoint(event.getPoint());
                return column < 0
                        ? ""
                        : model.texts()
                                .get(ConstituentTableModel.columnOf(column).tipKey());
            }
        };
    }

    /** A box with the sources of the register that fit the row's role, to choose from or to type over. */
    private static final class SourceEditor extends DefaultCellEditor {
        private static final long serialVersionUID = 1L;

        private final transient MixModel model;
        private final JComboBox<String> box;

        SourceEditor(MixModel model) {
            this(model, new JComboBox<>());
        }

        private SourceEditor(MixModel model, JComboBox<String> box) {
            super(box);
            this.model = model;
            this.box = box;
            box.setName("source");
            box.setEditable(true);
        }

        @Override
        public Component getTableCellEditorComponent(
                JTable table, Object value, boolean isSelected, int row, int column) {
            box.removeAllItems();
            box.addItem("");
            model.sourcesFor(model.draft().rows().get(row).role()).stream()
                    .map(source -> source.id().text())
                    .forEach(box::addItem);
            Component shown = super.getTableCellEditorComponent(table, value, isSelected, row, column);
            if (box.getEditor().getEditorComponent() instanceof JTextField typed) {
                typed.selectAll();
            }
            return shown;
        }
    }
}
