package porebench.desk.frame;

import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Texts;
import porebench.desk.form.WrappedText;

/** What stands on the right while no mix is selected: what to do next. */
final class Welcome {
    private final JPanel panel = new JPanel(new MigLayout("insets 48, wrap 1, hidemode 3", "[520::640]", "[]10[]20[]"));
    private final JLabel title = new JLabel();
    private final WrappedText words = new WrappedText("welcome.words", "quiet");
    private final JPanel buttons = new JPanel(new MigLayout("insets 0, gap 10", "[][]"));
    private final Texts texts;

    Welcome(Texts texts, Action newMix, Action importCsv) {
        this.texts = texts;
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

    /** Says what to do in a lab book without a mix, or with some of which none is selected. */
    void show(boolean noMixAtAll) {
        title.setText(texts.get(noMixAtAll ? "welcome.empty" : "welcome.choose"));
        words.setText(texts.get(noMixAtAll ? "welcome.empty.words" : "welcome.choose.words"));
        buttons.setVisible(noMixAtAll);
    }
}
