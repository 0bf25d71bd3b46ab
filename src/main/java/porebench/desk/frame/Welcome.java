package porebench.desk.frame;

import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;

/** What stands on the right in a lab book without a mix: what to do next. */
final class Welcome {
    private final JPanel panel = new JPanel(new MigLayout("insets 48, wrap 1, hidemode 3", "[520::640]", "[]10[]20[]"));

    Welcome(Texts texts, Action newMix, Action importCsv) {
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 10", "[][]"));
        panel.setName("welcome");
        buttons.add(Commands.button("welcome.newMix", newMix));
        buttons.add(Commands.button("welcome.import", importCsv));
        panel.add(Form.heading(texts.get("welcome.empty"), "h1"));
        panel.add(new WrappedText("welcome.words", "quiet", texts.get("welcome.empty.words")), "growx, wmin 0");
        panel.add(buttons);
    }

    JComponent component() {
        return panel;
    }
}
