package porebench.desk.trial;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Texts;
import porebench.desk.form.WrappedText;

/** The usual cautions of the bench, where the hazard is; they are always in sight. */
final class Cautions {
    private static final List<String> LINES =
            List.of("caution.pressure", "caution.release", "caution.lifting", "caution.dust", "caution.rules");

    private Cautions() {}

    static JComponent panel(Texts texts) {
        JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 5", "[grow,fill]"));
        panel.setName("cautions");
        panel.putClientProperty("FlatLaf.styleClass", "caution");
        JLabel title = new JLabel(texts.get("caution.title"));
        title.putClientProperty("FlatLaf.styleClass", "h2");
        panel.add(title);
        for (String line : LINES) {
            WrappedText text = new WrappedText(line, "");
            text.setText(texts.get(line));
            panel.add(text, "wmin 0");
        }
        return panel;
    }
}
