package porebench.desk.sample;

import java.util.Optional;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.form.History;

/** The page that says what to weigh and to pour for the selected mix and a bowl, and prints the trial sheet. */
public final class SamplePage implements Page {
    private final SampleModel model;
    private final SamplePanel panel;

    public SamplePage(DeskModel desk) {
        this.model = new SampleModel(desk);
        this.panel = new SamplePanel(desk, model);
        model.history().onChange(panel::refresh);
        desk.onChange(() -> {
            model.followDesk();
            panel.refresh();
        });
    }

    @Override
    public String name() {
        return "sample";
    }

    @Override
    public String title() {
        return model.texts().get("page.title");
    }

    @Override
    public JComponent component() {
        return panel.component();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.history());
    }
}
