package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.form.Texts;
import porebench.record.Meter;

/** The register of meters. */
public final class MetersPage implements Page {
    private final Texts texts;
    private final RecordPage<Meter> page;

    public MetersPage(DeskModel desk) {
        texts = RecordPage.texts(desk);
        MetersModel model = new MetersModel(desk, texts);
        page = new RecordPage<>(model, "meter", columns(model), new MeterForm(model), () -> note(model));
    }

    private List<Column<Meter>> columns(MetersModel model) {
        return List.of(
                new Column<>(texts.get("meter.id.plain"), 65, Meter::recordId),
                new Column<>(texts.get("meter.type.plain"), 75, meter -> model.typeWords(meter.type())),
                new Column<>(texts.get("meter.serial.plain"), 115, Meter::serial),
                new Column<>(texts.get("meter.bowl.short"), 95, model::bowlWords),
                new Column<>(texts.get("meter.service.heading"), 110, meter -> model.serviceWords(meter.inService())));
    }

    private String note(MetersModel model) {
        return model.isNew() ? "" : texts.get("meter.note");
    }

    @Override
    public String name() {
        return "meters";
    }

    @Override
    public String title() {
        return texts.get("meter.title");
    }

    @Override
    public JComponent component() {
        return page.component();
    }

    @Override
    public boolean hasUnsavedDraft() {
        return page.hasUnsavedDraft();
    }

    @Override
    public void dropDraft() {
        page.dropDraft();
    }

    @Override
    public void undo() {
        page.undo();
    }

    @Override
    public void redo() {
        page.redo();
    }

    @Override
    public Optional<String> undoLabel() {
        return page.undoLabel();
    }

    @Override
    public Optional<String> redoLabel() {
        return page.redoLabel();
    }

    @Override
    public void save() {
        page.save();
    }
}
