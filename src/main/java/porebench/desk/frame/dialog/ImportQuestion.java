package porebench.desk.frame.dialog;

import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Tools;
import porebench.method.Texts;
import porebench.record.RecordKind;

/** Shows what a CSV file would bring and everything that is wrong with it, and asks whether the good records be kept. */
public final class ImportQuestion {
    private final Texts texts;
    private final Tools tools;

    public ImportQuestion(Texts texts, Tools tools) {
        this.texts = texts;
        this.tools = tools;
    }

    /** Returns whether the person wants the good records kept; a file without a problem is asked about in one sentence. */
    public boolean ask(JComponent over, ImportModel incoming) {
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
        content.add(new ProblemTable(incoming.problems(), tools.problemText(), texts).component());
        if (incoming.hasSomethingToKeep()) {
            AskDialog dialog = new AskDialog(over, title, content);
            dialog.button("keepGood", keepWords(incoming));
            dialog.button("keepNothing", texts.get("import.nothing"));
            return dialog.ask() == 0;
        }
        AskDialog.read(over, title, content, texts);
        return false;
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
