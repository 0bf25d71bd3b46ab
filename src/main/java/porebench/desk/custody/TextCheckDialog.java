package porebench.desk.custody;

import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.Typing;
import porebench.desk.form.WrappedText;
import porebench.desk.frame.dialog.AskDialog;
import porebench.method.Texts;

/**
 * Holds the text of a card, pasted or typed, against the lab book: whether it was altered, which revision it is, and how that stands today.
 *
 * <p>Enter in the text makes a new line; Ctrl and Enter, and Enter beside the text, check; Escape closes.
 */
public final class TextCheckDialog {
    private static final int ROWS = 12;
    private static final int COLUMNS = 52;

    private final TextCheckModel model;
    private final Texts texts;
    private final JPanel content =
            new JPanel(new MigLayout("insets 0, wrap 1, hidemode 3", "[grow,fill,480::]", "[]4[grow,fill]10[]8[]"));
    /** Its room is kept, and longer words are scrolled: nothing moves when they come. */
    private final TallPanel said =
            new TallPanel(new MigLayout("insets 0, wrap 1, hidemode 3", "[grow,fill,0::]", "[]4[]4[]"));

    private final JTextArea text = new JTextArea(ROWS, COLUMNS);
    private final WrappedText verdict = new WrappedText("check.verdict", "h2");
    private final WrappedText names = new WrappedText("check.names", "");
    private final ProblemLines problems;

    private TextCheckDialog(DeskModel desk) {
        model = new TextCheckModel(desk);
        texts = model.texts();
        problems = new ProblemLines("check.problems", desk.tools().problemText());
        text.setName("check.text");
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        // The tabulator leads on to the buttons: no card has one in its text.
        text.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        text.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        Typing.follow(text, typed -> {
            model.text(typed);
            refresh();
        });
        content.add(Form.label(texts.get("check.text"), text));
        content.add(new JScrollPane(text), "hmin 120");
        said.add(verdict, "wmin 0");
        said.add(names, "wmin 0");
        said.add(problems.panel(), "wmin 0");
        said.setFocusable(false);
        content.add(said.scrolled(), "h 170!");
        content.add(new WrappedText("check.paper", "quiet", texts.get("check.paper")), "wmin 0");
        refresh();
    }

    /** Asks for a text and says what is found, as often as is wanted. */
    public static void ask(DeskModel desk, JComponent over) {
        new TextCheckDialog(desk).ask(over);
    }

    private void ask(JComponent over) {
        AskDialog dialog = new AskDialog(over, texts.get("check.title"), content);
        JButton check = dialog.button("check", "");
        Commands.say(check, texts.get("check.act"));
        dialog.closesOnlyIf(check, () -> {
            model.check(this::refresh);
            return false;
        });
        dialog.button("close", texts.get("check.close"));
        content.registerKeyboardAction(
                event -> check.doClick(),
                KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK),
                JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.ask();
    }

    private void refresh() {
        verdict.putClientProperty("FlatLaf.styleClass", model.isGood() ? "h2" : "caution");
        verdict.say(model.verdict());
        names.say(model.names());
        problems.show(model.problems());
    }
}
