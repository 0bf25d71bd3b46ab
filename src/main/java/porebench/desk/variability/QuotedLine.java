package porebench.desk.variability;

import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.QuotedUncertainty;
import porebench.desk.form.WorkedOut;
import porebench.desk.form.WrappedText;
import porebench.evidence.JudgedDetermination;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.method.budget.BudgetResult;

/** The one uncertainty to quote beside the factor of a determination, in a sentence. */
final class QuotedLine {
    private static final int DECIMALS = Digits.AIR;

    private final DeskModel desk;
    private final Texts texts;
    private final WrappedText sentence = new WrappedText("quoted", "h2");
    private final WorkedOut<QuotedUncertainty.Asked, Optional<BudgetResult>> quoted;
    private Optional<JudgedDetermination> shown = Optional.empty();

    QuotedLine(DeskModel desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
        quoted = new WorkedOut<>(() -> desk.tools().tasks(), new QuotedUncertainty()::of, this::show);
    }

    JComponent component() {
        return sentence;
    }

    /** Turns to a determination; empty while the mix has none. */
    void show(Optional<JudgedDetermination> determination) {
        shown = determination;
        show();
    }

    /** It is worked out only while somebody looks at it; while no trial counts there is nothing to say. */
    void show() {
        Optional<JudgedDetermination> counting =
                shown.filter(judged -> judged.summary().isPresent());
        sentence.say(counting.map(this::said).orElse(""));
    }

    private String said(JudgedDetermination judged) {
        return desk.evidence()
                .filter(known ->
                        sentence.getParent() != null && sentence.getParent().isShowing())
                .map(known -> new QuotedUncertainty.Asked(known, judged, desk.scatter()))
                .flatMap(quoted::to)
                .flatMap(Function.identity())
                .map(BudgetResult::uncertaintyPercent)
                .map(percent -> texts.get(
                        "quoted",
                        desk.tools().numbers().show(percent, DECIMALS),
                        desk.tools()
                                .numbers()
                                .show(judged.summary().orElseThrow().reportedPercent())))
                .orElseGet(() -> texts.get(quoted.isFailed() ? "quoted.failed" : "quoted.pending"));
    }
}
