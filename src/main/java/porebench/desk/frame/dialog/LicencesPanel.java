package porebench.desk.frame.dialog;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;

/** The list of libraries, and under it the licence of the one that is selected. */
final class LicencesPanel extends JPanel {
    private static final int LIST_HEIGHT = 200;
    private static final int WIDTH = 640;

    private final JTextArea words = new JTextArea(14, 76);

    LicencesPanel(Texts texts) {
        super(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]10[grow,fill]10[]4[grow,fill]"));
        RowTable<Licences.Library> table = new RowTable<>(
                "licences",
                texts.get("licences.title"),
                List.of(
                        new ShownColumn<>(texts.get("licences.name"), 340, Licences.Library::name),
                        new ShownColumn<>(texts.get("licences.version"), 75, Licences.Library::version),
                        new ShownColumn<>(texts.get("licences.licence"), 75, Licences.Library::licence)));
        table.show(Licences.libraries());
        table.onSelect(chosen -> chosen.ifPresent(this::show));
        words.setName("licenceWords");
        words.setEditable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        JLabel label = new JLabel(texts.get("licences.words"));
        label.setLabelFor(words);
        JScrollPane list = table.scrolled();
        list.setPreferredSize(new Dimension(UIScale.scale(WIDTH), UIScale.scale(LIST_HEIGHT)));
        add(AskDialog.text(texts.get("licences.exchange")));
        add(list);
        add(label);
        add(new JScrollPane(words));
        table.setRowSelectionInterval(0, 0);
    }

    private void show(Licences.Library library) {
        words.setText(Licences.words(library));
        words.setCaretPosition(0);
    }
}
