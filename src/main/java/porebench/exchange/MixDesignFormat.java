package porebench.exchange;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.intake.Sheet;
import porebench.method.Limit;
import porebench.method.profile.Profiles;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.Constituent;
import porebench.quantity.DensityUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.id.MixId;

/** {@code mix-design.csv}: one row a constituent, the rows of a mix together stating it. */
final class MixDesignFormat implements Format<MixDesign> {
    private static final List<String> SHARED = List.of(
            "mix_title",
            "batch_volume",
            "batch_volume_unit",
            "target_air_pct",
            "measured_density",
            "measured_density_unit",
            "wet_sieved",
            "soak_minutes",
            "air_tolerance_pct",
            "profile_id",
            "remarks");

    private static final Columns COLUMNS = Columns.of(
            "mix_id,mix_title,batch_volume,batch_volume_unit,target_air_pct," + ConstituentCells.COLUMNS,
            "measured_density,measured_density_unit,wet_sieved,soak_minutes,air_tolerance_pct,profile_id,remarks");

    @Override
    public Class<MixDesign> type() {
        return MixDesign.class;
    }

    @Override
    public String fileName() {
        return "mix-design.csv";
    }

    @Override
    public Columns columns() {
        return COLUMNS;
    }

    @Override
    public List<Sheet.Row<MixDesign>> read(Table table) {
        List<Sheet.Row<MixDesign>> good = new ArrayList<>();
        for (RowGroup group : RowGroup.readAll(table, "mix_id", SHARED)) {
            Optional<MixDesign> mix = read(group);
            if (group.checkGood(table, "mix_id")) {
                mix.ifPresent(design -> good.add(new Sheet.Row<>(group.first().line(), design)));
            }
        }
        return good;
    }

    private static Optional<MixDesign> read(RowGroup group) {
        Optional<BigDecimal> air = group.stating("target_air_pct").number("target_air_pct", Bounds.of("0", "100"));
        BatchVolume volume = volume(group);
        Optional<Boolean> wetSieved =
                group.stating("wet_sieved").optionalWord("wet_sieved").isEmpty()
                        ? Optional.of(false)
                        : group.stating("wet_sieved").yesNo("wet_sieved");
        Optional<BigDecimal> soak =
                group.stating("soak_minutes").optionalNumber("soak_minutes", Bounds.of(Limit.MIX_SOAK));
        Optional<BigDecimal> tolerance =
                group.stating("air_tolerance_pct").optionalNumber("air_tolerance_pct", Bounds.of(Limit.AIR_TOLERANCE));
        ConstituentRows constituents = ConstituentRows.read(group);
        if (wetSieved.isPresent()) {
            constituents.check(new Batch(constituents.values(), volume, air.orElse(BigDecimal.ZERO), wetSieved.get()));
        }
        if (air.isEmpty() || wetSieved.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new MixDesign(
                new MixId(group.name()),
                group.stating("mix_title").text("mix_title"),
                new Batch(constituents.values(), volume, air.get(), wetSieved.get()),
                soak,
                tolerance,
                group.stating("profile_id").optionalWord("profile_id").orElse(Profiles.DEFAULT_ID),
                group.stating("remarks").text("remarks")));
    }

    private static BatchVolume volume(RowGroup group) {
        Entry stated = group.stating("batch_volume");
        Entry measured = group.stating("measured_density");
        boolean isStated = stated.optionalWord("batch_volume").isPresent();
        boolean isMeasured = measured.optionalWord("measured_density").isPresent();
        if (isStated && isMeasured) {
            measured.error("measured_density", "csv.volume-twice");
        }
        if (isStated) {
            return statedVolume(group, stated);
        }
        if (isMeasured) {
            Optional<BigDecimal> number = measured.number("measured_density", Bounds.NOT_NEGATIVE);
            Optional<DensityUnit> unit = group.stating("measured_density_unit")
                    .choice("measured_density_unit", List.of(DensityUnit.values()), DensityUnit::symbol);
            if (number.isPresent() && unit.isPresent()) {
                return new BatchVolume.FromDensity(new Typed<>(number.get(), unit.get()));
            }
        }
        return new BatchVolume.FromConstituents();
    }

    private static BatchVolume statedVolume(RowGroup group, Entry stated) {
        Optional<BigDecimal> number = stated.number("batch_volume", Bounds.NOT_NEGATIVE);
        Optional<VolumeUnit> unit = group.stating("batch_volume_unit")
                .choice("batch_volume_unit", List.of(VolumeUnit.values()), VolumeUnit::symbol);
        if (number.isEmpty() || unit.isEmpty()) {
            return new BatchVolume.FromConstituents();
        }
        BatchVolume.Stated volume = new BatchVolume.Stated(new Typed<>(number.get(), unit.get()));
        return volume;
    }

    @Override
    public List<List<String>> write(MixDesign value) {
        List<List<String>> rows = new ArrayList<>();
        for (Constituent constituent : value.batch().constituents()) {
            List<String> row = new ArrayList<>(shared(value));
            row.addAll(ConstituentCells.write(constituent));
            row.addAll(extra(value));
            rows.add(row);
        }
        return rows;
    }

    private static List<String> shared(MixDesign value) {
        String volume = "";
        String unit = "";
        if (value.batch().volume() instanceof BatchVolume.Stated stated) {
            volume = stated.volume().number().toString();
            unit = stated.volume().unit().symbol();
        }
        return List.of(
                value.id().text(),
                value.title(),
                volume,
                unit,
                value.batch().targetAirPercent().toString());
    }

    private static List<String> extra(MixDesign value) {
        String density = "";
        String unit = "";
        if (value.batch().volume() instanceof BatchVolume.FromDensity measured) {
            density = measured.density().number().toString();
            unit = measured.density().unit().symbol();
        }
        return List.of(
                density,
                unit,
                Entry.yesNoWord(value.batch().wetSieved()),
                Format.cell(value.soakMinutes()),
                Format.cell(value.airTolerancePercent()),
                value.profileId(),
                value.remarks());
    }
}
