package porebench.desk.frame.dialog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Tools;
import porebench.evidence.intake.SheetStyle;
import porebench.method.Texts;
import porebench.record.RecordKind;

/**
 * Shows what CSV files would bring and everything that is wrong with them, and asks whether the good records be kept; files that
 * seem to be written in another way than is documented are offered to be read so.
 */
public final class ImportQuestion {
    private final Texts texts;
    private final Tools tools;

    public ImportQuestion(Texts texts, Tools tools) {
        this.texts = texts;
        this.tools = tools;
    }

    /**
     * What the person wants.
     *
     * @param keeps whether the good records are to be kept
     * @param anew how the files are to be read anew; empty when they are not
     */
    public record Answer(boolean keeps, Optional<SheetStyle> anew) {
        private static final Answer KEEP = new Answer(true, Optional.empty());
        private static final Answer NOTHING = new Answer(false, Optional.empty());
    }

    /** Asks what is to become of files that were read. */
    public Answer ask(JComponent over, ImportRead read) {
        if (read.otherwise().isEmpty()) {
            return ask(over, read.incoming()) ? Answer.KEEP : Answer.NOTHING;
        }
        ImportModel incoming = read.incoming();
        StylePanel styles = new StylePanel(read, texts);
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]10[]14[]10[grow,fill]"));
        content.add(AskDialog.text(texts.get("import.otherwise", read.otherwiseNames())));
        content.add(styles.component());
        content.add(AskDialog.text(summary(incoming)));
        if (!incoming.problems().isEmpty()) {
            content.add(problems(incoming));
        }
        AskDialog dialog = new AskDialog(over, texts.get("import.title"), content);
        List<Supplier<Answer>> answers = new ArrayList<>();
        if (!read.style().equals(SheetStyle.DOCUMENTED)) {
            addKeep(dialog, incoming, answers);
        }
        JButton anew = dialog.button("readAnew", texts.get("import.read-anew"));
        styles.onChange(isOther -> anew.setEnabled(isOther));
        answers.add(() -> new Answer(false, Optional.of(styles.style())));
        if (read.style().equals(SheetStyle.DOCUMENTED)) {
            addKeep(dialog, incoming, answers);
        }
        dialog.button("keepNothing", texts.get("import.nothing"));
        answers.add(() -> Answer.NOTHING);
        return answers.get(dialog.ask()).get();
    }

    private void addKeep(AskDialog dialog, ImportModel incoming, List<Supplier<Answer>> answers) {
        if (incoming.hasSomethingToKeep()) {
            dialog.button("keepGood", keepWords(incoming));
            answers.add(() -> Answer.KEEP);
        }
    }

    /** Returns whether the person wants the good records kept; files without a problem are asked about in one sentence. */
    private boolean ask(JComponent over, ImportModel incoming) {
        String title = texts.get("import.title");
        String summary = summary(incoming);
        if (incoming.problems().isEmpty()) {
            if (!incoming.hasSomethingToKeep()) {
                tools.asker().tell(over, title, summary);
                return false;
            }
            return tools.asker().confirm(over, title, summary, keepWords(incoming));
        }
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]10[grow,fill]"));
        content.add(AskDialog.text(summary));
        content.add(problems(incoming));
        if (incoming.hasSomethingToKeep()) {
            AskDialog dialog = new AskDialog(over, title, content);
            dialog.button("keepGood", keepWords(incoming));
            CopyButton.on(dialog, texts, () -> words(incoming));
            dialog.button("keepNothing", texts.get("import.nothing"));
            return dialog.ask() == 0;
        }
        CopyButton.read(over, title, content, () -> words(incoming), texts);
        return false;
    }

    private String words(ImportModel incoming) {
        return summary(incoming) + "\n\n" + CopyButton.words(incoming.problems(), tools.problemText(), texts);
    }

    private JComponent problems(ImportModel incoming) {
        return new ProblemTable(incoming.problems(), tools.problemText(), texts, incoming.files()).component();
    }

    private String keepWords(ImportModel incoming) {
        int records = incoming.result().drafts().size();
        return texts.get(incoming.errors() > 0 ? "import.keep-good" : "import.keep-all", Integer.toString(records));
    }

    private String summary(ImportModel incoming) {
        String there = Integer.toString(incoming.result().alreadyThere());
        String good = incoming.hasSomethingToKeep()
                ? texts.get("import.good", countsInWords(texts, incoming))
                : texts.get("import.none");
        String already = incoming.result().alreadyThere() > 0 ? " " + texts.get("import.there", there) : "";
        String wrong = incoming.errors() > 0 ? " " + texts.get("import.wrong", Long.toString(incoming.errors())) : "";
        String doubtful =
                incoming.warnings() > 0 ? " " + texts.get("import.doubtful", Long.toString(incoming.warnings())) : "";
        return texts.get("import.file", incoming.file()) + " " + good + already + wrong + doubtful;
    }

    public static String countsInWords(Texts texts, ImportModel incoming) {
        return incoming.counts().entrySet().stream()
                .map(entry -> texts.get(kindKey(entry.getKey()), Integer.toString(entry.getValue())))
                .collect(Collectors.joining(", "));
    }

    private static String kindKey(RecordKind kind) {
        return "kind." + kind.symbol();
    }
}
