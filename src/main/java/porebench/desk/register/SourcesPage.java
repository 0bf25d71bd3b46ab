package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.Source;
import porebench.record.column.SourceColumns;

/** The register of sources. */
public final class SourcesPage extends RecordPage<Source> {
    public SourcesPage(DeskModel desk) {
        this(new SourcesModel(desk, texts(desk)));
    }

    private SourcesPage(SourcesModel model) {
        super(model, columns(model, model.texts()), Optional.empty());
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
