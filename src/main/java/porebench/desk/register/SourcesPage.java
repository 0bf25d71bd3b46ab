package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import porebench.desk.DeskModel;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.Source;
import porebench.record.column.SourceColumns;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** The register of sources. */
public final class SourcesPage extends RecordPage<Source> {
    /**
     * Makes the register.
     *
     * @param openMix turns the window to a mix that uses a source
     * @param openTrial turns the window to a trial made with one
     */
    public SourcesPage(DeskModel desk, Consumer<MixId> openMix, Consumer<TrialId> openTrial) {
        this(new SourcesModel(desk, texts(desk)), openMix, openTrial);
    }

    private SourcesPage(SourcesModel model, Consumer<MixId> openMix, Consumer<TrialId> openTrial) {
        super(
                model,
                columns(model, model.texts()),
                Optional.empty(),
                openMix,
                new SourceSections(model, openMix, openTrial));
    }

    private static List<ShownColumn<Source>> columns(SourcesModel model, Texts texts) {
        return List.of(
                shown(model, SourceColumns.ID, 52).sortedBy(Source::recordId),
                shown(model, SourceColumns.NAME, 150).sortedBy(Source::name),
                shown(model, SourceColumns.ROLE, 62),
                shown(model, SourceColumns.LEDGE, 95),
                shown(model, SourceColumns.RELATIVE_DENSITY, texts.get("source.relativeDensity.short"), 72),
                shown(model, SourceColumns.ABSORPTION, texts.get("source.absorption.short"), 66));
    }
}
