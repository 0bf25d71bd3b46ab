package porebench.desk.frame.dialog;

import com.formdev.flatlaf.FlatLaf;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import porebench.method.Texts;

/** Says what the workbench is for and where its limits are, and which versions are at work. */
public final class About {
    private static final String STYLE = "FlatLaf.styleClass";

    private final Texts texts;

    public About(Texts texts) {
        this.texts = texts;
    }

    public void showCautions(JComponent over) {
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]6[]16[]6[]"));
        content.add(heading("cautions.bench"));
        JPanel box = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]"));
        box.putClientProperty(STYLE, "caution");
        JTextArea cautions = AskDialog.text(texts.get("cautions.bench.words"));
        cautions.putClientProperty("FlatLaf.style", "foreground: $Porebench.caution.foreground");
        box.add(cautions);
        content.add(box);
        content.add(heading("cautions.limits"));
        content.add(AskDialog.text(texts.get("cautions.limits.words")));
        AskDialog dialog = new AskDialog(over, texts.get("cautions.title"), content);
        dialog.button("close", texts.get("ask.close"));
        dialog.ask();
    }

    public void showAbout(JComponent over) {
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]8[]14[]"));
        JLabel name = new JLabel(texts.get("about.name"));
        name.putClientProperty(STYLE, "h1");
        content.add(name);
        content.add(AskDialog.text(texts.get("about.words")));
        content.add(AskDialog.text(texts.get(
                "about.versions",
                version(About.class).orElse(texts.get("about.from-sources")),
                System.getProperty("java.version", ""),
                version(FlatLaf.class).orElse(texts.get("about.from-sources")))));
        AskDialog dialog = new AskDialog(over, texts.get("about.title"), content);
        JButton licences = dialog.button("licences", texts.get("about.licences"));
        dialog.closesOnlyIf(licences, () -> {
            showLicences(content);
            return false;
        });
        dialog.button("close", texts.get("ask.close"));
        dialog.askSafely();
    }

    private void showLicences(JComponent over) {
        AskDialog dialog = new AskDialog(over, texts.get("licences.title"), new LicencesPanel(texts));
        dialog.button("close", texts.get("ask.close"));
        dialog.ask();
    }

    private JLabel heading(String key) {
        JLabel label = new JLabel(texts.get(key));
        label.putClientProperty(STYLE, "h2");
        return label;
    }

    private static Optional<String> version(Class<?> type) {
        return Optional.ofNullable(type.getPackage().getImplementationVersion());
    }
}
