package porebench.desk.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Form;
import porebench.desk.form.KeptRoom;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.method.Digits;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.trial.TrialFactor;
import porebench.record.Trial;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;

/** The factor of the trial being typed, and what is doubtful about it as a whole. */
final class LivePanel {
    private static final int DECIMALS = Digits.AIR;
    /** In lines: two doubts and what the factor would be, beside the fields of a small window. */
    private static final int ROOM = 9;

    /** In % air: half of the last decimal shown. */
    private static final double SMALLEST_SHOWN = 0.005;

    private final TrialsModel model;
    private final Texts texts;
    private final JLabel number = Form.heading("", "live");
    private final WrappedText words = new WrappedText("liveWords", "quiet");
    private final WrappedText stop = new WrappedText("liveStop", "quiet");
    private final ProblemLines doubts;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill]", "[]6[]4[]"));

    LivePanel(TrialsModel model) {
        this.model = model;
        this.texts = model.texts();
        this.doubts = new ProblemLines("liveDoubts", model.desk().tools().problemText());
        number.setName("liveFactor");
        panel.add(Form.heading(texts.get("live.title"), "h2"));
        panel.add(number);
        JPanel said = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 4", "[grow,fill,0::]"));
        said.setOpaque(false);
        said.add(doubts.panel(), "wmin 0");
        said.add(words, "wmin 0");
        said.add(stop, "wmin 0");
        panel.add(new KeptRoom(said, ROOM), "wmin 0");
    }

    JComponent component() {
        return panel;
    }

    /** Shows the factor as it is, with the problems that stand under no field. */
    void show(List<Problem> underNoField) {
        TypedTrial entry = model.entry().read();
        Optional<TrialFactor> figures = entry.live();
        OptionalDouble factor = figures.map(TrialFactor::factorPercent).orElse(OptionalDouble.empty());
        number.setText(
                factor.isPresent()
                        ? texts.get("live.value", model.desk().tools().numbers().show(factor.getAsDouble(), DECIMALS))
                        : texts.get("live.none"));
        words.setText((said(entry, factor) + " " + asTyped(figures)).strip());
        stop.say(model.stop().withTyped(figures).orElse(""));
        doubts.show(underNoField);
    }

    /** Says what the factor would be without the calibrations of the meter, where they moved it. */
    private String asTyped(Optional<TrialFactor> figures) {
        return figures.filter(known -> known.correctionPercent().isPresent())
                .filter(known -> Math.abs(known.correctionPercent().getAsDouble()) >= SMALLEST_SHOWN)
                .map(known -> texts.get(
                        "live.as-typed",
                        model.desk()
                                .tools()
                                .numbers()
                                .show(known.uncorrectedPercent().orElseThrow(), DECIMALS)))
                .orElse("");
    }

    private String said(TrialsModel.KeptTrial kept) {
        return kept.factor().isPresent()
                ? texts.get(
                        "live.kept",
                        kept.trial(),
                        model.desk().tools().numbers().show(kept.factor().getAsDouble(), DECIMALS))
                : texts.get("live.kept-without", kept.trial());
    }

    private String said(TypedTrial entry, OptionalDouble factor) {
        if (model.entry().draft().isYes(TrialColumns.LEAK)) {
            return texts.get("live.void");
        }
        Optional<Column<Trial, ?>> refused = entry.refused();
        if (refused.isPresent()) {
            return texts.get("live.refused", model.entry().words(refused.get()));
        }
        if (factor.isEmpty() && model.lastKept().isPresent()) {
            return said(model.lastKept().get());
        }
        if (factor.isEmpty()) {
            return texts.get(model.entry().type() == MeterType.A ? "live.waiting-a" : "live.waiting-b");
        }
        return model.entry().shown().isEmpty() && entry.problems().isEmpty() ? texts.get("live.fine") : "";
    }
}
