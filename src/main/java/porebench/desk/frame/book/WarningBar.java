package porebench.desk.frame.book;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.Commands;
import porebench.desk.form.WrappedText;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;

/**
 * What is to be known of the lab book as it was opened and used, across the window for as long as it is open: that nothing can
 * be kept in it, what the look at opening found, that the clock went back. No words, no bar.
 */
public final class WarningBar {
    private static final int SHOWN = 3;

    private final JPanel panel =
            new JPanel(new MigLayout("insets 8 22 8 22, fillx, hidemode 3", "[grow,fill,0::]18[]", "[]"));
    private final WrappedText words = new WrappedText("warnings.words", "cautionText");
    private final JButton demoAnew;
    private final DeskModel desk;
    private final Turning turning;
    private final Texts texts;
    private final ProblemText problemText;

    /**
     * Makes the bar.
     *
     * @param replacing makes the demo anew where it is the demo's lab book in which nothing can be kept
     */
    public WarningBar(DeskModel desk, Texts texts, Turning turning, Replacing replacing) {
        this.desk = desk;
        this.texts = texts;
        this.turning = turning;
        this.problemText = desk.tools().problemText();
        demoAnew = Commands.button(
                "warnings.demoAnew", Commands.of(texts.get("no-book.demo-anew.action"), replacing::demoAnew));
        panel.setName("warnings");
        panel.putClientProperty("FlatLaf.styleClass", "warningBar");
        words.setFocusable(true);
        panel.add(words, "wmin 0");
        panel.add(demoAnew);
        panel.setVisible(false);
    }

    public JComponent component() {
        return panel;
    }

    public void refresh() {
        List<String> said = said();
        words.setText(said.stream().limit(SHOWN).collect(Collectors.joining("\n"))
                + (said.size() > SHOWN ? "\n" + texts.get("warnings.more", said.size() - SHOWN) : ""));
        demoAnew.setVisible(desk.book().notWritable().isPresent()
                && turning.file().filter(turning.invented().demo()::equals).isPresent());
        panel.setVisible(!said.isEmpty());
        panel.getAccessibleContext().setAccessibleName(words.getText());
    }

    /** Returns why nothing can be kept first, then the rest, each once. */
    private List<String> said() {
        List<Problem> all = new ArrayList<>();
        desk.book().notWritable().ifPresent(all::add);
        all.addAll(desk.book().warnings());
        return all.stream().map(problemText::sayWithPlace).distinct().toList();
    }
}
