package porebench.store;

import java.time.LocalDateTime;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** The table {@code trial}. */
final class TrialTable implements RecordTable<Trial> {
    private static final String SIMULATED = "simulated";

    @Override
    public RecordKind kind() {
        return RecordKind.TRIAL;
    }

    @Override
    public String name() {
        return "trial";
    }

    @Override
    public StoredRecord rows(Trial trial) {
        StoredRow row = new StoredRow(name())
                .cell("trial_id", trial.id().text())
                .cell("mix_id", trial.mixId().text())
                .cell("determination_id", trial.determinationId().text())
                .cell("tested_at", trial.testedAt().toString())
                .cell("operator", trial.operator())
                .cell("meter_id", trial.meterId().text())
                .cell("remarks", trial.remarks())
                .text("kept_because", trial.keptBecause())
                .text("struck_because", trial.struckBecause());
        addReadings(row, trial.readings());
        if (trial.simulated()) {
            row.flag(SIMULATED, true);
        }
        return StoredRecord.of(row);
    }

    private static void addReadings(StoredRow row, Readings readings) {
        row.cell("meter_type", readings.meterType().name())
                .typed("bowl_volume", readings.bowl())
                .number("soak_minutes", readings.soakMinutes())
                .number("water_temp_c", readings.waterCelsius())
                .number("gauge_pct", readings.gaugePercent())
                .number("h1_pct", readings.h1Percent())
                .number("h2_pct", readings.h2Percent())
                .flag("leak", readings.leak());
        readings.fine().ifPresent(mass -> row.typed("fine_mass", mass));
        readings.coarse().ifPresent(mass -> row.typed("coarse_mass", mass));
        readings.withdrawal()
                .ifPresent(water -> row.number("withdrawn", water.number())
                        .cell("withdrawn_unit", water.unit().symbol()));
    }

    @Override
    public Trial value(StoredRecord rows) {
        StoredRow row = rows.row();
        return new Trial(
                new TrialId(row.text("trial_id")),
                new MixId(row.text("mix_id")),
                new DeterminationId(row.text("determination_id")),
                LocalDateTime.parse(row.text("tested_at")),
                row.text("operator"),
                new MeterId(row.text("meter_id")),
                readings(row),
                row.text("remarks"),
                row.textIfAny("kept_because"),
                row.textIfAny("struck_because"),
                row.has(SIMULATED) && row.flag(SIMULATED));
    }

    private static Readings readings(StoredRow row) {
        return new Readings(
                row.word("meter_type", MeterType.values(), MeterType::name),
                row.typed("bowl_volume", VolumeUnit.values()),
                mass(row, "fine_mass"),
                mass(row, "coarse_mass"),
                row.numberIfAny("soak_minutes"),
                row.numberIfAny("water_temp_c"),
                withdrawal(row),
                row.numberIfAny("gauge_pct"),
                row.numberIfAny("h1_pct"),
                row.numberIfAny("h2_pct"),
                row.flag("leak"));
    }

    private static Optional<Typed<Mass>> mass(StoredRow row, String column) {
        return row.has(column) ? Optional.of(row.typed(column, MassUnit.values())) : Optional.empty();
    }

    private static Optional<Withdrawal> withdrawal(StoredRow row) {
        return row.numberIfAny("withdrawn")
                .map(number -> new Withdrawal(
                        number, row.word("withdrawn_unit", Withdrawal.Unit.values(), Withdrawal.Unit::symbol)));
    }
}
