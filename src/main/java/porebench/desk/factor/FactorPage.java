package porebench.desk.factor;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.form.History;
import porebench.method.Texts;

/** Page 5 of a mix: its factor issued, replaced or withdrawn; its history; its card seen and printed. */
public final class FactorPage implements Page {
    private final FactorModel model;
    private final FactorActions actions;
    private final Texts texts;
    private final JScrollPane scroll;

    public FactorPage(DeskModel desk) {
        texts = Texts.of("porebench.desk.factor.factor", desk.tools().locale());
        model = new FactorModel(desk);
        actions = new FactorActions(desk, model, texts);
        FactorPanel panel = new FactorPanel(desk, model, actions, texts);
        actions.over(panel.component());
        scroll = panel.component().scrolled();
        desk.onChange(() -> {
            model.follow();
            panel.refresh();
        });
        model.history().onChange(panel::refresh);
        panel.refresh();
    }

    @Override
    public String name() {
        return "factor";
    }

    @Override
    public String title() {
        return texts.get("page.title");
    }

    @Override
    public JComponent component() {
        return scroll;
    }

    @Override
    public boolean hasUnsavedDraft() {
        return model.history().isChanged();
    }

    @Override
    public void dropDraft() {
        model.begin();
    }

    @Override
    public void save() {
        actions.issue();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.history());
    }
}
