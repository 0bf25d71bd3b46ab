package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import porebench.desk.DeskModel;
import porebench.desk.RecallOffer;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.Source;
import porebench.record.column.SourceColumns;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** The register of sources. */
public final class SourcesPage extends RecordPage<Source> {
    private final SourcesModel model;
    private final RecallOffer recall;

    /**
     * Makes the register.
     *
     * @param openMix turns the window to a mix that uses a source
     * @param openTrial turns the window to a trial made with one
     * @param openCards turns the window to cards, by the names of their records; without any to those that have to come back
     */
    public SourcesPage(
            DeskModel desk, Consumer<MixId> openMix, Consumer<TrialId> openTrial, Consumer<List<String>> openCards) {
        this(new SourcesModel(desk, texts(desk)), openMix, openTrial, openCards);
    }

    private SourcesPage(
            SourcesModel model,
            Consumer<MixId> openMix,
            Consumer<TrialId> openTrial,
            Consumer<List<String>> openCards) {
        super(
                model,
                columns(model, model.texts()),
                Optional.empty(),
                openMix,
                new SourceSections(model, openMix, openTrial));
        this.model = model;
        recall = new RecallOffer(model.desk(), this::component, openCards);
    }

    @Override
    void afterEffects() {
        List<MixId> untrue = model.saidUntrue();
        recall.afterKeeping(untrue::contains);
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
