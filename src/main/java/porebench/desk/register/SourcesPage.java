package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.Source;

/** The register of sources. */
public final class SourcesPage extends RecordPage<Source> {
    public SourcesPage(DeskModel desk) {
        this(new SourcesModel(desk, texts(desk)));
    }

    private SourcesPage(SourcesModel model) {
        super("sources", model, columns(model, model.texts()), Optional.empty());
    }

    private static List<ShownColumn<Source>> columns(SourcesModel model, Texts texts) {
        return List.of(
                new ShownColumn<>(texts.get("source.id.plain"), 52, Source::recordId).sortedBy(Source::recordId),
                new ShownColumn<>(texts.get("source.name.plain"), 150, Source::name).sortedBy(Source::name),
                new ShownColumn<>(texts.get("source.role.plain"), 62, source -> model.roleWords(source.role())),
                new ShownColumn<>(texts.get("source.ledge.plain"), 95, Source::ledge),
                new ShownColumn<>(
                        texts.get("source.relativeDensity.short"), 72, source -> model.shown(source.relativeDensity())),
                new ShownColumn<>(
                        texts.get("source.absorption.short"), 66, source -> model.shown(source.absorptionPercent())));
    }
}
