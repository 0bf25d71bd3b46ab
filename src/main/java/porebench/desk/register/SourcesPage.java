package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.form.History;
import porebench.method.Texts;
import porebench.record.Source;

/** The register of sources. */
public final class SourcesPage implements Page {
    private final Texts texts;
    private final RecordPage<Source> page;

    public SourcesPage(DeskModel desk) {
        texts = RecordPage.texts(desk);
        SourcesModel model = new SourcesModel(desk, texts);
        page = new RecordPage<>(model, "source", columns(model), () -> note(model));
    }

    private List<ShownColumn<Source>> columns(SourcesModel model) {
        return List.of(
                new ShownColumn<>(texts.get("source.id.plain"), 52, Source::recordId),
                new ShownColumn<>(texts.get("source.name.plain"), 150, Source::name),
                new ShownColumn<>(texts.get("source.role.plain"), 62, source -> model.roleWords(source.role())),
                new ShownColumn<>(texts.get("source.ledge.plain"), 95, Source::ledge),
                new ShownColumn<>(
                        texts.get("source.relativeDensity.short"), 72, source -> model.shown(source.relativeDensity())),
                new ShownColumn<>(
                        texts.get("source.absorption.short"), 66, source -> model.shown(source.absorptionPercent())));
    }

    private String note(SourcesModel model) {
        if (model.isNew()) {
            return "";
        }
        List<String> mixes =
                model.mixesUsing().stream().map(mix -> mix.id().text()).toList();
        return mixes.isEmpty()
                ? texts.get("source.unused")
                : texts.get("source.used", String.join(", ", mixes))
                        + model.factors().map(said -> " " + said).orElse("");
    }

    @Override
    public String name() {
        return "sources";
    }

    @Override
    public String title() {
        return texts.get("source.title");
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
