package porebench.desk.mix;

import java.awt.Component;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import porebench.record.column.MixColumns;

/** A box with the sources of the register that fit the row's role, to choose from or to type over. */
final class SourceEditor extends DefaultCellEditor {
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
    public Component getTableCellEditorComponent(JTable table, Object value, boolean isSelected, int row, int column) {
        box.removeAllItems();
        box.addItem("");
        model.sourcesFor(model.rows().get(row).chosen(MixColumns.ROLE)).stream()
                .map(source -> source.id().text())
                .forEach(box::addItem);
        Component shown = super.getTableCellEditorComponent(table, value, isSelected, row, column);
        if (box.getEditor().getEditorComponent() instanceof JTextField typed) {
            typed.selectAll();
        }
        return shown;
    }
}
