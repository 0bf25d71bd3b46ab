package porebench.desk.frame.dialog;

import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Form;
import porebench.method.Texts;
import porebench.port.Release;

/** Says what the workbench is for and where its limits are, and which versions are at work. */
public final class About {
    private final Texts texts;

    public About(Texts texts) {
        this.texts = texts;
    }

    public void showCautions(JComponent over) {
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]6[]16[]6[]"));
        content.add(heading("cautions.bench"));
        JPanel box = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]"));
        box.putClientProperty("FlatLaf.styleClass", "caution");
        JTextArea cautions = AskDialog.text(texts.get("cautions.bench.words"));
        cautions.putClientProperty("FlatLaf.style", "foreground: $Porebench.caution.foreground");
        box.add(cautions);
        content.add(box);
        content.add(heading("cautions.limits"));
        content.add(AskDialog.text(texts.get("cautions.limits.words")));
        AskDialog.read(over, texts.get("cautions.title"), content, texts);
    }

    public void showAbout(JComponent over) {
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]8[]14[]"));
        content.add(Form.heading(texts.get("about.name"), "h1"));
        content.add(AskDialog.text(texts.get("about.words")));
        content.add(AskDialog.text(versions()));
        AskDialog dialog = new AskDialog(over, texts.get("about.title"), content);
        CopyButton.on(dialog, texts, () -> versions() + "\n\n" + libraries());
        JButton licences = dialog.button("licences", texts.get("about.licences"));
        dialog.closesOnlyIf(licences, () -> {
            AskDialog.read(content, texts.get("licences.title"), new LicencesPanel(texts), texts);
            return false;
        });
        dialog.button("close", texts.get("ask.close"));
        dialog.askSafely();
    }

    /** Says in which order the work is done, from an empty lab book to a card. */
    public void showSteps(JComponent over) {
        show(over, "steps");
    }

    /** Says which keys do what. */
    public void showKeys(JComponent over) {
        show(over, "keys");
    }

    /** Says what the words of the trade, and our own few, mean here. */
    public void showWords(JComponent over) {
        show(over, "glossary");
    }

    private void show(JComponent over, String key) {
        AskDialog.read(
                over,
                texts.get("help." + key + ".title"),
                AskDialog.scrolled(AskDialog.text(texts.get("help." + key))),
                texts);
    }

    private JLabel heading(String key) {
        return Form.heading(texts.get(key), "h2");
    }

    private String versions() {
        return texts.get(
                "about.versions",
                Release.version().orElse(texts.get("about.from-sources")),
                System.getProperty("java.version", ""),
                System.getProperty("java.vendor", ""),
                System.getProperty("os.name", ""),
                System.getProperty("os.version", ""),
                System.getProperty("os.arch", ""));
    }

    /** Returns the libraries with their versions and licences, one a line. */
    private static String libraries() {
        return Licences.libraries().stream()
                .map(library -> library.name() + ", " + library.version() + ", " + library.licence())
                .collect(Collectors.joining("\n"));
    }
}
