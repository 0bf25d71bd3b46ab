package porebench.desk.frame.book;

import java.awt.Component;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.desk.frame.dialog.CopyButton;
import porebench.method.Texts;

/** What the window shows while no lab book is open: why, what is safe, and what can be done. */
public final class NoBookPage {
    private final TallPanel panel =
            new TallPanel(new MigLayout("insets 48, wrap 1, hidemode 3", "[0:720:720]", "[]10[]16[]"));
    private final JComponent scroll;
    private final JLabel title = Form.heading("", "h1");
    private final JPanel box =
            new JPanel(new MigLayout("insets 0, wrap 1, hidemode 3", "[grow,fill,0::]", "[]6[]6[]6[]6[]"));
    private final WrappedText file = new WrappedText("noBook.file", "cautionStrong");
    private final WrappedText why = new WrappedText("noBook.why", "cautionText");
    private final WrappedText safe = new WrappedText("noBook.safe", "cautionText");
    private final WrappedText details = new WrappedText("noBook.log", "cautionText");
    private final JPanel ways =
            new JPanel(new MigLayout("insets 0, wrap 2, hidemode 3", "[fill]16[grow,fill,0::]", ""));
    private final List<JButton> buttons = new ArrayList<>();
    private final List<JComponent> forDemo = new ArrayList<>();
    private final Texts texts;
    private final Supplier<Optional<Path>> log;

    public NoBookPage(Texts texts, Supplier<Optional<Path>> log) {
        this.texts = texts;
        this.log = log;
        panel.setName("noBook");
        title.setName("noBook.title");
        box.putClientProperty("FlatLaf.styleClass", "caution");
        for (WrappedText text : List.of(file, why, safe, details)) {
            // The name of a file and the reason are what somebody is asked for on the telephone, or by mail.
            text.setFocusable(true);
            box.add(text, "wmin 0");
        }
        box.add(CopyButton.on("noBook.copy", texts, this::words), "alignx left, growx 0");
        panel.add(title, "wmin 0");
        panel.add(box, "growx, wmin 0");
        panel.add(ways, "growx, wmin 0");
        scroll = panel.scrolled();
        opening("");
    }

    public JComponent component() {
        return scroll;
    }

    /** Adds something that can be done, with the words that say what comes of it. */
    void add(String name, Action action, String words) {
        JButton button = Commands.button(name, action);
        WrappedText text = new WrappedText(name + ".words", "quiet", words);
        buttons.add(button);
        ways.add(button);
        ways.add(text, "wmin 0, aligny center");
    }

    /** Adds something that can be done only when it is the demo's own file that stands in the way. */
    void addForDemo(String name, Action action, String words) {
        add(name, action, words);
        forDemo.add(buttons.remove(buttons.size() - 1));
        int last = ways.getComponentCount();
        forDemo.add((JComponent) ways.getComponent(last - 1));
    }

    /** Says that a lab book is being opened, and offers nothing until that is over. */
    public void opening(String name) {
        title.setText(name.isEmpty() ? texts.get("no-book.title") : texts.get("no-book.opening", name));
        box.setVisible(false);
        ways.setVisible(false);
    }

    /** Says why no lab book is open. */
    public void show(Trouble trouble) {
        title.setText(texts.get("no-book.title"));
        file.setText(trouble.file().toString());
        why.setText(trouble.why());
        safe.setText(texts.get(trouble.isFailure() ? "no-book.safe.failure" : "no-book.safe.refused"));
        Optional<Path> written = trouble.isFailure() ? log.get() : Optional.empty();
        details.say(
                written.map(path -> texts.get("failure.log", path.toString())).orElse(""));
        forDemo.forEach(each -> each.setVisible(trouble.isOfDemo()));
        box.setVisible(true);
        ways.setVisible(true);
        panel.revalidate();
        panel.repaint();
    }

    /** Returns what the page says, to be copied. */
    private String words() {
        return Stream.of(title.getText(), file.getText(), why.getText(), safe.getText(), details.getText())
                .filter(line -> !line.isBlank())
                .collect(Collectors.joining("\n"));
    }

    /** Moves the focus to the first thing that can be done. */
    public void focus() {
        Stream.concat(forDemo.stream(), buttons.stream())
                .filter(Component::isVisible)
                .findFirst()
                .ifPresent(Component::requestFocusInWindow);
    }
}
