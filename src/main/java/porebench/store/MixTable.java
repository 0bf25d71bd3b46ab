package porebench.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.Constituent;
import porebench.quantity.DensityUnit;
import porebench.quantity.MassUnit;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.id.MixId;

/** The tables {@code mix} and {@code mix_constituent}. */
final class MixTable implements RecordTable<MixDesign> {
    private static final String CONSTITUENT = "mix_constituent";
    private static final String VOLUME = "batch_volume";
    private static final String DENSITY = "batch_density";

    @Override
    public RecordKind kind() {
        return RecordKind.MIX;
    }

    @Override
    public String name() {
        return "mix";
    }

    @Override
    public List<String> partTables() {
        return List.of(CONSTITUENT);
    }

    @Override
    public StoredRecord rows(MixDesign mix) {
        StoredRow row = new StoredRow(name())
                .cell("mix_id", mix.id().text())
                .cell("title", mix.title())
                .number("target_air_pct", mix.batch().targetAirPercent())
                .flag("wet_sieved", mix.batch().wetSieved())
                .number("soak_minutes", mix.soakMinutes())
                .number("air_tolerance_pct", mix.airTolerancePercent())
                .cell("profile_id", mix.profileId())
                .cell("remarks", mix.remarks());
        if (mix.batch().volume() instanceof BatchVolume.Stated stated) {
            row.typed(VOLUME, stated.volume());
        } else if (mix.batch().volume() instanceof BatchVolume.FromDensity measured) {
            row.typed(DENSITY, measured.density());
        }
        List<StoredRow> constituents = new ArrayList<>();
        for (Constituent constituent : mix.batch().constituents()) {
            constituents.add(constituent(constituents.size() + 1, constituent));
        }
        return new StoredRecord(row, constituents);
    }

    private static StoredRow constituent(int position, Constituent constituent) {
        return new StoredRow(CONSTITUENT)
                .cell("position", position)
                .cell("name", constituent.name())
                .cell("role", constituent.role().symbol())
                .text("source_id", constituent.sourceId())
                .typed("mass", constituent.mass())
                .cell("moisture_state", constituent.state().symbol())
                .number("absorption_pct", constituent.absorptionPercent())
                .number("moisture_pct", constituent.moisturePercent())
                .number("relative_density", constituent.relativeDensity())
                .number("retained_37_5mm_pct", constituent.retainedPercent());
    }

    @Override
    public MixDesign value(StoredRecord rows) {
        StoredRow row = rows.row();
        List<Constituent> constituents = rows.parts().stream()
                .sorted(Comparator.comparingInt(part -> part.count("position")))
                .map(MixTable::constituent)
                .toList();
        return new MixDesign(
                new MixId(row.text("mix_id")),
                row.text("title"),
                new Batch(constituents, volume(row), row.number("target_air_pct"), row.flag("wet_sieved")),
                row.numberIfAny("soak_minutes"),
                row.numberIfAny("air_tolerance_pct"),
                row.text("profile_id"),
                row.text("remarks"));
    }

    private static BatchVolume volume(StoredRow row) {
        if (row.has(VOLUME)) {
            return new BatchVolume.Stated(row.typed(VOLUME, VolumeUnit.values()));
        }
        return row.has(DENSITY)
                ? new BatchVolume.FromDensity(row.typed(DENSITY, DensityUnit.values()))
                : new BatchVolume.FromConstituents();
    }

    private static Constituent constituent(StoredRow row) {
        return new Constituent(
                row.text("name"),
                row.word("role", Role.values(), Role::symbol),
                row.textIfAny("source_id"),
                row.typed("mass", MassUnit.values()),
                row.word("moisture_state", MoistureState.values(), MoistureState::symbol),
                row.numberIfAny("absorption_pct"),
                row.numberIfAny("moisture_pct"),
                row.numberIfAny("relative_density"),
                row.number("retained_37_5mm_pct"));
    }
}
