package porebench.desk.frame;

import java.awt.Toolkit;
import java.nio.file.Path;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.Form;
import porebench.method.Texts;
import porebench.record.Laboratory;

/** The line at the foot of the window: whose lab book this is and where, what is being done, who works here, and in which units. */
final class StatusStrip {
    private static final int STAYS_MILLISECONDS = 3000;

    private final JPanel panel =
            new JPanel(new MigLayout("insets 4 16 4 16, fillx", "[grow,0::]24[]24[]24[]24[]", "[]"));
    private final JLabel book = new JLabel();
    private final JLabel lost = Form.heading("", "fieldWarning");
    private final JLabel doing = new JLabel();
    private final JLabel person = new JLabel();
    private final JLabel units = new JLabel();
    private final Timer found = new Timer(STAYS_MILLISECONDS, event -> lost.setText(""));
    private final DeskModel desk;
    private final Texts texts;
    private String file = "";

    StatusStrip(DeskModel desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
        found.setRepeats(false);
        panel.putClientProperty("FlatLaf.styleClass", "rail");
        for (JLabel label : new JLabel[] {book, doing, person, units}) {
            label.putClientProperty("FlatLaf.styleClass", "quiet");
        }
        book.setName("strip.book");
        lost.setName("strip.lost");
        doing.setName("strip.doing");
        person.setName("strip.person");
        units.setName("strip.units");
        panel.add(book, "wmin 0");
        panel.add(lost);
        panel.add(doing);
        panel.add(person);
        panel.add(units);
        desk.onDoing(() -> doing.setText(desk.doing()));
    }

    JComponent component() {
        return panel;
    }

    /**
     * Says what was typed and went nowhere, with a beep for who looks at the bench; blank where nothing did. It stays for a while
     * after typing has found a field again: who looks up only then should see it.
     */
    void lost(String letters) {
        if (letters.isEmpty()) {
            found.restart();
            return;
        }
        found.stop();
        if (lost.getText().isEmpty()) {
            Toolkit.getDefaultToolkit().beep();
        }
        lost.setText(texts.get("strip.lost", letters));
    }

    /** Shows from now on where the lab book is kept. */
    void say(Path path) {
        file = path.toString();
    }

    void refresh() {
        String laboratory = desk.laboratory().map(Laboratory::name).orElse(texts.get("strip.no-laboratory"));
        book.setText(desk.hasBook() ? texts.get("strip.book", laboratory, file) : texts.get("no-book.title"));
        book.setToolTipText(desk.hasBook() ? file : null);
        person.setText(desk.person().isBlank() ? texts.get("strip.nobody") : texts.get("strip.person", desk.person()));
        units.setText(texts.get("strip.units", texts.get(unitsKey())));
    }

    private String unitsKey() {
        return "units." + desk.units().name();
    }
}
