package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import porebench.desk.DeskModel;
import porebench.desk.StateMark;
import porebench.desk.form.Commands;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.Meter;
import porebench.record.column.MeterColumns;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** The register of meters. */
public final class MetersPage extends RecordPage<Meter> {
    private static final int MARK_SIDE = 12;

    /**
     * Makes the register.
     *
     * @param openMeter turns the window to the page of a meter with its calibrations
     * @param openMix turns the window to a mix with trials on a meter
     */
    public MetersPage(DeskModel desk, Consumer<MeterId> openMeter, Consumer<MixId> openMix) {
        this(new MetersModel(desk, texts(desk)), openMeter, openMix);
    }

    private MetersPage(MetersModel model, Consumer<MeterId> openMeter, Consumer<MixId> openMix) {
        super(
                model,
                columns(model, model.texts()),
                Optional.of(Commands.of(
                        model.texts().get("meter.open"),
                        () -> model.base()
                                .ifPresent(
                                        meter -> openMeter.accept(meter.value().id())))),
                openMix,
                RecordSections.NONE);
    }

    private static List<ShownColumn<Meter>> columns(MetersModel model, Texts texts) {
        return List.of(
                shown(model, MeterColumns.ID, 44).sortedBy(Meter::recordId),
                new ShownColumn<>(texts.get("meter.state.heading"), 148, model::stateWords)
                        .mark((meter, selected) -> new StateMark(model.state(meter), MARK_SIDE))
                        .sortedBy(model::state),
                new ShownColumn<>(texts.get("meter.due"), 94, model::nextDueWords),
                new ShownColumn<>(
                        texts.get("meter.type.plain"), 46, meter -> meter.type().name()),
                new ShownColumn<>(texts.get("meter.bowl.short"), 96, model::bowlWords),
                shown(model, MeterColumns.IN_SERVICE, texts.get("meter.service.heading"), 94),
                shown(model, MeterColumns.SERIAL, 95));
    }
}
