package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.StateMark;
import porebench.desk.form.Commands;
import porebench.desk.form.History;
import porebench.method.Texts;
import porebench.record.Meter;
import porebench.record.id.MeterId;

/** The register of meters. */
public final class MetersPage implements Page {
    private static final int MARK_SIDE = 12;

    private final Texts texts;
    private final RecordPage<Meter> page;

    /**
     * Makes the register.
     *
     * @param openMeter turns the window to the page of a meter with its calibrations
     */
    public MetersPage(DeskModel desk, Consumer<MeterId> openMeter) {
        texts = RecordPage.texts(desk);
        MetersModel model = new MetersModel(desk, texts);
        Action open = Commands.of(
                texts.get("meter.open"),
                () -> model.base()
                        .ifPresent(meter -> openMeter.accept(meter.value().id())));
        page = new RecordPage<>(model, "meter", columns(model), () -> note(model), Optional.of(open));
    }

    private List<ShownColumn<Meter>> columns(MetersModel model) {
        return List.of(
                new ShownColumn<>(texts.get("meter.id.plain"), 44, Meter::recordId),
                new ShownColumn<>(
                        texts.get("meter.state.heading"),
                        148,
                        model::stateWords,
                        Optional.of(meter -> new StateMark(model.state(meter), MARK_SIDE))),
                new ShownColumn<>(texts.get("meter.due"), 94, model::nextDueWords),
                new ShownColumn<>(
                        texts.get("meter.type.plain"), 46, meter -> meter.type().name()),
                new ShownColumn<>(texts.get("meter.bowl.short"), 78, model::bowlWords),
                new ShownColumn<>(
                        texts.get("meter.service.heading"), 94, meter -> model.serviceWords(meter.inService())),
                new ShownColumn<>(texts.get("meter.serial.plain"), 95, Meter::serial));
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
    public void save() {
        page.save();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(page.history());
    }
}
