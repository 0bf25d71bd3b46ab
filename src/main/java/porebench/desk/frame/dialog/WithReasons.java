package porebench.desk.frame.dialog;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.ReasonMenu;
import porebench.method.Texts;

/** A field for a reason with those that were given before for the same act; without any it is the field alone. */
final class WithReasons {
    private WithReasons() {}

    static JComponent below(JTextArea field, List<String> reasons, Texts texts) {
        JScrollPane scroll = new JScrollPane(field);
        if (reasons.isEmpty()) {
            return scroll;
        }
        JPanel both = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[grow,fill]6[]"));
        both.add(scroll);
        both.add(ReasonMenu.below(field, () -> reasons, texts.locale()), "growx 0");
        return both;
    }
}
