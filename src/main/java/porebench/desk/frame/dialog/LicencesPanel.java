package porebench.desk.frame.dialog;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import porebench.method.Texts;

/** The list of libraries, and under it the licence of the one that is selected. */
final class LicencesPanel extends JPanel {
    private static final int LIST_HEIGHT = 200;
    private static final int WIDTH = 640;

    private final List<Licences.Library> libraries = Licences.libraries();
    private final JTextArea words = new JTextArea(14, 76);

    LicencesPanel(Texts texts) {
        super(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]10[grow,fill]10[]4[grow,fill]"));
        DefaultTableModel model =
                new DefaultTableModel(
                        new Object[] {
                            texts.get("licences.name"), texts.get("licences.version"), texts.get("licences.licence")
                        },
                        0) {
                    @Override
                    public boolean isCellEditable(int row, int column) {
                        return false;
                    }
                };
        for (Licences.Library library : libraries) {
            model.addRow(new Object[] {library.name(), library.version(), library.licence()});
        }
        JTable table = new JTable(model);
        table.setName("licences");
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getColumnModel().getColumn(0).setPreferredWidth(UIScale.scale(340));
        table.getAccessibleContext().setAccessibleName(texts.get("licences.title"));
        table.getSelectionModel().addListSelectionListener(event -> show(table.getSelectedRow()));
        words.setName("licenceWords");
        words.setEditable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        JLabel label = new JLabel(texts.get("licences.words"));
        label.setLabelFor(words);
        JScrollPane list = new JScrollPane(table);
        list.setPreferredSize(new Dimension(UIScale.scale(WIDTH), UIScale.scale(LIST_HEIGHT)));
        add(AskDialog.text(texts.get("licences.exchange")));
        add(list);
        add(label);
        add(new JScrollPane(words));
        table.setRowSelectionInterval(0, 0);
    }

    private void show(int row) {
        if (row >= 0) {
            words.setText(Licences.words(libraries.get(row)));
            words.setCaretPosition(0);
        }
    }
}
