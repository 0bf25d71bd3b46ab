package porebench.desk.mix;

import java.awt.Component;
import java.util.HashMap;
import java.util.Map;
import javax.swing.DefaultCellEditor;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextField;
import porebench.desk.form.SpokenChoices;
import porebench.record.Source;
import porebench.record.column.MixColumns;

/** A box with the sources of the register that fit the row's role, to choose from or to type over. */
final class SourceEditor extends DefaultCellEditor {
    private static final long serialVersionUID = 1L;

    private final transient MixModel model;
    private final JComboBox<String> box;
    /** What a source is called in the list, by its id. */
    private final transient Map<String, String> names = new HashMap<>();

    SourceEditor(MixModel model) {
        this(model, new JComboBox<>());
    }

    private SourceEditor(MixModel model, JComboBox<String> box) {
        super(box);
        this.model = model;
        this.box = box;
        box.setName("source");
        box.setEditable(true);
        SpokenChoices.follow(box);
        box.setRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean isSelected, boolean hasFocus) {
                String said = names.getOrDefault(String.valueOf(value), " ");
                return super.getListCellRendererComponent(list, said, index, isSelected, hasFocus);
            }
        });
    }

    @Override
    public Component getTableCellEditorComponent(JTable table, Object value, boolean isSelected, int row, int column) {
        box.removeAllItems();
        box.addItem("");
        names.clear();
        for (Source source : model.sourcesFor(model.rows().get(row).chosen(MixColumns.ROLE))) {
            names.put(
                    source.id().text(),
                    model.texts().get("source.item", source.id().text(), source.name()));
            box.addItem(source.id().text());
        }
        Component shown = super.getTableCellEditorComponent(table, value, isSelected, row, column);
        if (box.getEditor().getEditorComponent() instanceof JTextField typed) {
            typed.selectAll();
        }
        return shown;
    }
}
