package porebench.desk.frame.dialog;

import java.awt.Desktop;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Tools;
import porebench.desk.form.Copying;
import porebench.method.Texts;

/** The file in which the details of failures stand: where it is, what it says last, and both to be copied. */
public final class LogDialog {
    /** The length of the end that is shown, in bytes; the whole file is in its folder. */
    private static final int MOST_SHOWN = 64 * 1024;

    private final Tools tools;
    private final Texts texts;
    private final Supplier<Optional<Path>> log;

    /**
     * Makes the dialog.
     *
     * @param log returns the file; empty when there is none
     */
    public LogDialog(Tools tools, Texts texts, Supplier<Optional<Path>> log) {
        this.tools = tools;
        this.texts = texts;
        this.log = log;
    }

    private record Written(Path file, String words) {}

    /** Reads the file and shows it; where there is none, it says so. */
    public void show(JComponent over) {
        tools.tasks()
                .run(
                        texts.get("log.doing"),
                        () -> read(log.get()),
                        written -> written.ifPresentOrElse(
                                each -> show(over, each),
                                () -> tools.asker().tell(over, texts.get("log.title"), texts.get("log.none"))),
                        failure -> tools.asker().failure(over, texts.get("log.doing"), failure));
    }

    private static Optional<Written> read(Optional<Path> file) throws IOException {
        return file.isEmpty() ? Optional.empty() : Optional.of(new Written(file.get(), end(file.get())));
    }

    /** Returns the last part of a file, from the beginning of a line. */
    static String end(Path file) throws IOException {
        long from = Math.max(0, Files.size(file) - MOST_SHOWN);
        try (InputStream in = Files.newInputStream(file)) {
            in.skipNBytes(from);
            String words = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return from == 0 ? words : words.substring(words.indexOf('\n') + 1);
        }
    }

    private void show(JComponent over, Written written) {
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]10[]4[]10[grow,fill]"));
        content.add(AskDialog.text(texts.get("log.words")));
        JTextField path = new JTextField(written.file().toString(), 50);
        path.setName("log.path");
        path.setEditable(false);
        JLabel label = new JLabel(texts.get("log.file"));
        label.setLabelFor(path);
        content.add(label);
        content.add(path);
        JTextArea words = new JTextArea(written.words(), 18, 90);
        words.setName("log.words");
        words.setEditable(false);
        words.getAccessibleContext().setAccessibleName(texts.get("log.title"));
        content.add(new JScrollPane(words));
        AskDialog dialog = new AskDialog(over, texts.get("log.title"), content);
        if (canOpen()) {
            JButton open = dialog.button("log.open", texts.get("log.open"));
            dialog.closesOnlyIf(open, () -> {
                openFolder(content, written.file());
                return false;
            });
        }
        copies(dialog, "log.copy-path", written.file().toString());
        copies(dialog, "log.copy-words", written.words());
        dialog.button("close", texts.get("ask.close"));
        dialog.askSafely();
    }

    private void copies(AskDialog dialog, String key, String words) {
        JButton button = dialog.button(key, texts.get(key));
        dialog.closesOnlyIf(button, () -> {
            button.setText(texts.get(CopyButton.said(Copying.copy(words))));
            return false;
        });
    }

    private static boolean canOpen() {
        return Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.OPEN);
    }

    /** The system may take its time to open a folder. */
    private void openFolder(JComponent over, Path file) {
        tools.tasks()
                .run(
                        texts.get("log.opening"),
                        () -> {
                            Path folder = file.toAbsolutePath().getParent();
                            Desktop.getDesktop().open((folder == null ? file : folder).toFile());
                            return file;
                        },
                        done -> {},
                        failure -> tools.asker().failure(over, texts.get("log.opening"), failure));
    }
}
