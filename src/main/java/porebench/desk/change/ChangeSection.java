package porebench.desk.change;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.DeterminationSection;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.form.Form;
import porebench.desk.form.OnView;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.id.DeterminationId;

/** Trials before the newest change of a source against those after it, where there was one: verdict, plot, figures. */
public final class ChangeSection implements DeterminationSection {
    private static final int DIFFERENCE_HEIGHT = 170;

    private final ChangeModel model;
    private final Texts texts;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    private final JPanel changed = column();
    private final WrappedText verdict = new WrappedText("change.verdict", "h3");
    private final ProblemLines doubts;
    private final PlotPanel difference;
    private final JPanel figures =
            new JPanel(new MigLayout("insets 0, fillx, wrap 2, gapy 6", "[]18[grow,fill]", "[top]"));
    private final JPanel reasons = column();
    private final DecisionPanel decision;
    private boolean isStale = true;

    public ChangeSection(DeskModel desk) {
        model = new ChangeModel(desk);
        texts = model.texts();
        doubts = new ProblemLines("change.doubts", desk.tools().problemText());
        difference = plot("difference", DIFFERENCE_HEIGHT, "section.difference");
        panel.setName("change");
        panel.setOpaque(false);
        figures.setOpaque(false);
        changed.add(Form.heading(texts.get("section.change"), "h2"));
        changed.add(verdict, "wmin 0");
        changed.add(doubts.panel(), "wmin 0");
        changed.add(difference.component(), "wmin 0, gaptop 8");
        changed.add(figures, "wmin 0, gaptop 6");
        changed.add(reasons, "wmin 0, gaptop 4");
        decision = new DecisionPanel(model, panel);
        changed.add(decision.component(), "wmin 0, gaptop 10");
        panel.add(changed, "wmin 0, gaptop 18");
        OnView.each(panel, () -> {
            if (isStale) {
                show();
            }
        });
        model.onChange(this::showSoon);
        Looks.onOther(this::showSoon);
    }

    private static JPanel column() {
        JPanel column = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 4", "[grow,fill]"));
        column.setOpaque(false);
        return column;
    }

    private PlotPanel plot(String name, int height, String title) {
        return new PlotPanel(
                model.desk().tools(),
                name,
                height,
                new PlotPanel.Words(
                        texts.get(title), () -> model.pictureName(name), model::subject, model.desk()::isTraining));
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void show(Optional<DeterminationId> determination) {
        showSoon();
    }

    /** Shows it now when anybody can see it, else as soon as somebody can. */
    private void showSoon() {
        isStale = true;
        if (panel.isShowing()) {
            show();
        }
    }

    private void show() {
        isStale = false;
        boolean isChanged = model.isShown();
        changed.setVisible(isChanged);
        if (isChanged) {
            showChange();
        }
        panel.revalidate();
        panel.repaint();
    }

    private void showChange() {
        verdict.say(model.verdict());
        doubts.show(model.doubts());
        model.difference().ifPresent(data -> difference.view().show(data, Looks.now()));
        difference.component().setVisible(model.difference().isPresent());
        figures.removeAll();
        List<ChangeModel.Line> lines = model.lines();
        for (int i = 0; i < lines.size(); i++) {
            figures.add(new JLabel(lines.get(i).name()));
            figures.add(new WrappedText("change.figure." + i, "", lines.get(i).value()), "wmin 0");
        }
        reasons.removeAll();
        List<String> said = model.reasons();
        for (int i = 0; i < said.size(); i++) {
            reasons.add(new WrappedText("change.reason." + i, "", said.get(i)), "wmin 0");
        }
        decision.show();
    }
}
