package porebench.desk.frame;

import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;

/** What stands on the right in a lab book without a mix: what to do next. */
final class Welcome {
    private final JPanel panel = new JPanel(new MigLayout("insets 48, wrap 1, hidemode 3", "[520::640]", "[]10[]20[]"));

    Welcome(Texts texts, Action newMix, Action importCsv) {
        JLabel title = new JLabel(texts.get("welcome.empty"));
        WrappedText words = new WrappedText("welcome.words", "quiet");
        words.setText(texts.get("welcome.empty.words"));
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 10", "[][]"));
        panel.setName("welcome");
        title.putClientProperty("FlatLaf.styleClass", "h1");
        buttons.add(button(newMix, "welcome.newMix"));
        buttons.add(button(importCsv, "welcome.import"));
        panel.add(title);
        panel.add(words, "growx, wmin 0");
        panel.add(buttons);
    }

    private static JButton button(Action action, String name) {
        JButton button = new JButton(action);
        button.setName(name);
        return button;
    }

    JComponent component() {
        return panel;
    }
}
