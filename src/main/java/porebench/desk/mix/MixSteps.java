package porebench.desk.mix;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.form.History;
import porebench.desk.form.Numbers;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.quantity.DensityUnit;
import porebench.quantity.MassUnit;
import porebench.quantity.VolumeUnit;
import porebench.record.Source;

/** What a person can do to the draft of a mix design; each step can be undone by its name. */
final class MixSteps {
    private final DeskModel desk;
    private final History<MixDraft> history;
    private final Texts texts;
    private final KnownSources sources;
    private final Numbers numbers;

    MixSteps(DeskModel desk, History<MixDraft> history, Texts texts, KnownSources sources) {
        this.desk = desk;
        this.history = history;
        this.texts = texts;
        this.sources = sources;
        this.numbers = desk.tools().numbers();
    }

    private MixDraft draft() {
        return history.draft();
    }

    void type(MixField field, String text) {
        update(texts.get("step.change", texts.get(field.nameKey())), draft().with(field, text));
    }

    void choose(VolumeFrom from) {
        update(texts.get("step.volume-from"), draft().with(from));
    }

    void choose(VolumeUnit unit) {
        update(texts.get("step.volume-unit"), draft().with(unit));
    }

    void choose(DensityUnit unit) {
        update(texts.get("step.density-unit"), draft().with(unit));
    }

    void chooseWetSieved(boolean sieved) {
        update(texts.get("step.wet-sieved"), draft().withWetSieved(sieved));
    }

    void chooseProfile(String id) {
        update(texts.get("step.profile"), draft().withProfile(id));
    }

    /** Types into a cell; a mass may bring its unit along, as in {@code 1735 lb}. */
    void type(int row, MixColumn column, String text) {
        MixRow before = draft().rows().get(row);
        if (column == MixColumn.SOURCE) {
            chooseSource(row, text);
            return;
        }
        MixRow changed = before.with(column, text);
        if (column == MixColumn.MASS) {
            changed = withUnitFromText(before, text);
        }
        update(cellStep(row, column), draft().with(row, changed));
    }

    private MixRow withUnitFromText(MixRow before, String text) {
        String stripped = text.strip();
        for (MassUnit unit : MassUnit.values()) {
            String number = stripped.endsWith(unit.symbol())
                    ? stripped.substring(0, stripped.length() - unit.symbol().length())
                            .strip()
                    : "";
            if (numbers.parse(number).isPresent()) {
                return before.with(MixColumn.MASS, number).with(unit);
            }
        }
        return before.with(MixColumn.MASS, text);
    }

    private void chooseSource(int row, String typed) {
        String id = typed.strip();
        MixRow before = draft().rows().get(row);
        SourceOffer earlier = SourceOffer.of(source(before.text(MixColumn.SOURCE)), before.state(), numbers);
        SourceOffer offer = SourceOffer.of(source(id), before.state(), numbers);
        MixRow changed = offer.replacing(earlier, before.with(MixColumn.SOURCE, id));
        if (before.text(MixColumn.NAME).isBlank()) {
            changed = changed.with(MixColumn.NAME, source(id).map(Source::name).orElse(id));
        }
        update(cellStep(row, MixColumn.SOURCE), draft().with(row, changed));
    }

    void choose(int row, Role role) {
        update(
                cellStep(row, MixColumn.ROLE),
                draft().with(row, draft().rows().get(row).with(role)));
    }

    void choose(int row, MassUnit unit) {
        update(
                cellStep(row, MixColumn.MASS_UNIT),
                draft().with(row, draft().rows().get(row).with(unit)));
    }

    /** Chooses the moisture state of a mass; a relative density offered by the register follows its basis. */
    void choose(int row, MoistureState state) {
        MixRow before = draft().rows().get(row);
        Optional<Source> source = source(before.text(MixColumn.SOURCE));
        MixRow changed = before.with(state);
        if (source.isPresent()) {
            SourceOffer earlier = SourceOffer.of(source, before.state(), numbers);
            changed = SourceOffer.of(source, state, numbers).replacing(earlier, changed);
        }
        update(cellStep(row, MixColumn.STATE), draft().with(row, changed));
    }

    /** Adds an empty row below another one, coarse aggregate to begin with; below none it becomes the last. */
    int addRow(int below) {
        List<MixRow> rows = new ArrayList<>(draft().rows());
        int at = below < 0 || below >= rows.size() ? rows.size() : below + 1;
        rows.add(at, MixRow.named("", Role.COARSE, desk.units().batchMass()));
        update(texts.get("step.add-row", Integer.toString(rows.size())), draft().with(rows));
        return at;
    }

    void removeRow(int row) {
        List<MixRow> rows = new ArrayList<>(draft().rows());
        rows.remove(row);
        update(texts.get("step.remove-row", Integer.toString(row + 1), rowName(row)), draft().with(rows));
    }

    /** Swaps a row with the one above (-1) or below (1). */
    void moveRow(int row, int by) {
        List<MixRow> rows = new ArrayList<>(draft().rows());
        Collections.swap(rows, row, row + by);
        update(texts.get("step.move-row", rowName(row)), draft().with(rows));
    }

    private String cellStep(int row, MixColumn column) {
        return texts.get("step.cell", Integer.toString(row + 1), texts.get(column.nameKey()));
    }

    private String rowName(int row) {
        String name = draft().rows().get(row).text(MixColumn.NAME).strip();
        return name.isEmpty() ? texts.get("row", Integer.toString(row + 1)) : name;
    }

    private void update(String label, MixDraft changed) {
        history.update(label, changed);
    }

    private Optional<Source> source(String id) {
        return sources.find(id);
    }
}
