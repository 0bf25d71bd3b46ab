package porebench.exchange;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import porebench.method.Limit;
import porebench.method.MeterType;
import porebench.method.trial.Readings;
import porebench.method.trial.TrialLimits;
import porebench.method.trial.Withdrawal;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** {@code trial-sheet.csv}: one row a trial. */
final class TrialFormat implements Format.RowByRow<Trial> {
    private static final Columns COLUMNS = Columns.of(
            "trial_id,mix_id,tested_at,operator,meter_id,meter_type,bowl_volume,bowl_volume_unit,fine_mass,coarse_mass,"
                    + "mass_unit,soak_minutes,water_temp_c,withdrawn,withdrawn_unit,gauge_pct,h1_pct,h2_pct,leak,remarks",
            "determination_id,kept_because,struck_because,coarse_mass_unit,simulated");

    private static final Bounds READING = Bounds.of("0", "100");
    private static final Bounds WATER = Bounds.of(Limit.WATER);

    @Override
    public Class<Trial> type() {
        return Trial.class;
    }

    @Override
    public String fileName() {
        return "trial-sheet.csv";
    }

    @Override
    public Columns columns() {
        return COLUMNS;
    }

    @Override
    public List<String> key() {
        return List.of("trial_id");
    }

    @Override
    public Optional<Trial> read(Entry entry) {
        Optional<TrialId> id = entry.id("trial_id", TrialId::new);
        Optional<MixId> mixId = entry.id("mix_id", MixId::new);
        Optional<LocalDateTime> testedAt = entry.dateTime("tested_at");
        Optional<MeterId> meterId = entry.id("meter_id", MeterId::new);
        Optional<Readings> readings = readings(entry);
        Optional<Boolean> simulated = entry.optionalYesNo("simulated").or(() -> Optional.of(false));
        if (id.isEmpty()
                || simulated.isEmpty()
                || mixId.isEmpty()
                || testedAt.isEmpty()
                || meterId.isEmpty()
                || readings.isEmpty()) {
            return Optional.empty();
        }
        String determination =
                entry.optionalWord("determination_id").orElse(mixId.get().text());
        return Optional.of(new Trial(
                id.get(),
                mixId.get(),
                new DeterminationId(determination),
                testedAt.get(),
                entry.text("operator"),
                meterId.get(),
                readings.get(),
                entry.text("remarks"),
                entry.optionalText("kept_because"),
                entry.optionalText("struck_because"),
                simulated.get()));
    }

    private static Optional<Readings> readings(Entry entry) {
        Optional<MeterType> type = entry.choice("meter_type", List.of(MeterType.values()), MeterType::name);
        Optional<Typed<Volume>> bowl = Bowls.read(entry);
        Optional<Typed<Mass>> fine = Optional.empty();
        Optional<Typed<Mass>> coarse = Optional.empty();
        if (entry.optionalWord("fine_mass")
                .or(() -> entry.optionalWord("coarse_mass"))
                .isPresent()) {
            Optional<MassUnit> unit = massUnit(entry, "mass_unit");
            Optional<MassUnit> coarseUnit =
                    entry.optionalWord("coarse_mass_unit").isPresent() ? massUnit(entry, "coarse_mass_unit") : unit;
            fine = mass(entry, "fine_mass", unit);
            coarse = mass(entry, "coarse_mass", coarseUnit);
        }
        Optional<BigDecimal> soak = entry.optionalNumber("soak_minutes", Bounds.of(Limit.TRIAL_SOAK));
        Optional<BigDecimal> water = entry.optionalNumber("water_temp_c", WATER);
        Optional<Withdrawal> withdrawal = withdrawal(entry);
        Optional<BigDecimal> gauge = entry.optionalNumber("gauge_pct", READING);
        Optional<BigDecimal> h1 = entry.optionalNumber("h1_pct", READING);
        Optional<BigDecimal> h2 = entry.optionalNumber("h2_pct", READING);
        Optional<Boolean> leak = entry.yesNo("leak");
        if (type.isEmpty() || bowl.isEmpty() || leak.isEmpty()) {
            return Optional.empty();
        }
        Readings readings =
                new Readings(type.get(), bowl.get(), fine, coarse, soak, water, withdrawal, gauge, h1, h2, leak.get());
        // Bowl, soak and water were looked at cell by cell.
        TrialLimits.check(readings).forEach(problem -> entry.error(problem.field() + "_mass", problem));
        return Optional.of(readings);
    }

    private static Optional<MassUnit> massUnit(Entry entry, String column) {
        return entry.choice(column, List.of(MassUnit.values()), MassUnit::symbol);
    }

    private static Optional<Typed<Mass>> mass(Entry entry, String column, Optional<MassUnit> unit) {
        Optional<BigDecimal> number = entry.optionalNumber(column, Bounds.NOT_NEGATIVE);
        return number.isPresent() && unit.isPresent()
                ? Optional.of(new Typed<Mass>(number.get(), unit.get()))
                : Optional.empty();
    }

    private static Optional<Withdrawal> withdrawal(Entry entry) {
        if (entry.optionalWord("withdrawn").isEmpty()) {
            return Optional.empty();
        }
        Optional<BigDecimal> number = entry.number("withdrawn", Bounds.NOT_NEGATIVE);
        Optional<Withdrawal.Unit> unit =
                entry.choice("withdrawn_unit", Arrays.asList(Withdrawal.Unit.values()), Withdrawal.Unit::symbol);
        return number.isPresent() && unit.isPresent()
                ? Optional.of(new Withdrawal(number.get(), unit.get()))
                : Optional.empty();
    }

    @Override
    public List<String> row(Trial value) {
        Readings read = value.readings();
        Optional<String> unit =
                read.fine().or(read::coarse).map(mass -> mass.unit().symbol());
        Optional<String> coarseUnit = read.coarse().map(mass -> mass.unit().symbol());
        return List.of(
                value.id().text(),
                value.mixId().text(),
                value.testedAt().toString(),
                value.operator(),
                value.meterId().text(),
                read.meterType().name(),
                read.bowl().number().toString(),
                read.bowl().unit().symbol(),
                Format.cell(read.fine().map(Typed::number)),
                Format.cell(read.coarse().map(Typed::number)),
                Format.cell(unit),
                Format.cell(read.soakMinutes()),
                Format.cell(read.waterCelsius()),
                Format.cell(read.withdrawal().map(Withdrawal::number)),
                Format.cell(read.withdrawal().map(w -> w.unit().symbol())),
                Format.cell(read.gaugePercent()),
                Format.cell(read.h1Percent()),
                Format.cell(read.h2Percent()),
                Entry.yesNoWord(read.leak()),
                value.remarks(),
                value.determinationId().text(),
                value.keptBecause().orElse(""),
                value.struckBecause().orElse(""),
                coarseUnit.equals(unit) ? "" : Format.cell(coarseUnit),
                value.simulated() ? Entry.yesNoWord(true) : "");
    }
}
