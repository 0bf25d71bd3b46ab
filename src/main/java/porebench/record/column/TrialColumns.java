package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
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

/** The columns of a trial. */
public final class TrialColumns {
    private static final CellType<Typed<Mass>> A_MASS = CellType.quantity(MassUnit.values(), NumberRange.NOT_NEGATIVE);
    private static final CellType<BigDecimal> A_READING = CellType.number(NumberRange.READING);
    private static final CellType<Withdrawal> A_WITHDRAWAL = CellType.withUnit(
            Withdrawal.Unit.values(),
            Withdrawal.Unit::symbol,
            NumberRange.NOT_NEGATIVE,
            Withdrawal::new,
            Withdrawal::number,
            Withdrawal::unit);

    public static final Column<Trial, TrialId> ID =
            Column.needed("trial_id", CellType.word(TrialId::new, TrialId::text), Trial::id);
    public static final Column<Trial, MixId> MIX =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), Trial::mixId);
    public static final Column<Trial, LocalDateTime> TESTED_AT =
            Column.needed("tested_at", CellType.moment(), Trial::testedAt);
    public static final Column<Trial, String> OPERATOR = Column.needed("operator", CellType.text(), Trial::operator);
    public static final Column<Trial, MeterId> METER = Column.needed(
                    "meter_id", CellType.word(MeterId::new, MeterId::text), Trial::meterId)
            .called("meter");
    public static final Column<Trial, MeterType> METER_TYPE =
            read("meter_type", CellType.choice(MeterType.values(), MeterType::name), Readings::meterType);
    public static final Column<Trial, Typed<Volume>> BOWL =
            read("bowl_volume", BowlCell.TYPE, Readings::bowl).called("bowl");
    public static final Column<Trial, Typed<Mass>> FINE =
            readIfAny("fine_mass", A_MASS, Readings::fine).unitIn("mass_unit").called("fine");
    public static final Column<Trial, Typed<Mass>> COARSE = readIfAny("coarse_mass", A_MASS, Readings::coarse)
            .unitIn("coarse_mass_unit", "mass_unit")
            .called("coarse");
    public static final Column<Trial, BigDecimal> SOAK = readIfAny(
                    "soak_minutes", CellType.number(Limit.TRIAL_SOAK), Readings::soakMinutes)
            .called("soak");
    public static final Column<Trial, BigDecimal> WATER = readIfAny(
                    "water_temp_c", CellType.number(Limit.WATER), Readings::waterCelsius)
            .called("waterTemperature");
    public static final Column<Trial, Withdrawal> WITHDRAWN =
            readIfAny("withdrawn", A_WITHDRAWAL, Readings::withdrawal);
    public static final Column<Trial, BigDecimal> GAUGE =
            readIfAny("gauge_pct", A_READING, Readings::gaugePercent).called("gauge");
    public static final Column<Trial, BigDecimal> H1 =
            readIfAny("h1_pct", A_READING, Readings::h1Percent).called("h1");
    public static final Column<Trial, BigDecimal> H2 =
            readIfAny("h2_pct", A_READING, Readings::h2Percent).called("h2");
    public static final Column<Trial, Boolean> LEAK = read("leak", CellType.yesNo(), Readings::leak);
    public static final Column<Trial, String> REMARKS = Column.needed("remarks", CellType.text(), Trial::remarks);
    /** A row of a file that names no determination belongs to its mix until it is placed. */
    public static final Column<Trial, DeterminationId> DETERMINATION = Column.any(
                    "determination_id",
                    CellType.word(DeterminationId::new, DeterminationId::text),
                    (Trial trial) -> Optional.of(trial.determinationId()))
            .extra();

    public static final Column<Trial, String> KEPT_BECAUSE =
            Column.any("kept_because", CellType.text(), Trial::keptBecause).extra();
    public static final Column<Trial, String> STRUCK_BECAUSE =
            Column.any("struck_because", CellType.text(), Trial::struckBecause).extra();
    public static final Column<Trial, BigDecimal> ELEVATION = Column.any(
                    "elevation_m", CellType.number(Limit.ELEVATION), Trial::elevationMetres)
            .called("elevation")
            .since(10)
            .extra();
    public static final Column<Trial, Boolean> SIMULATED =
            Column.<Trial>mark("simulated", Trial::simulated).since(3);

    public static final Columns<Trial> ALL = Columns.of(
                    "trial",
                    TrialColumns::made,
                    ID,
                    MIX,
                    TESTED_AT,
                    OPERATOR,
                    METER,
                    METER_TYPE,
                    BOWL,
                    FINE,
                    COARSE,
                    SOAK,
                    WATER,
                    WITHDRAWN,
                    GAUGE,
                    H1,
                    H2,
                    LEAK,
                    REMARKS,
                    DETERMINATION,
                    KEPT_BECAUSE,
                    STRUCK_BECAUSE,
                    ELEVATION,
                    SIMULATED)
            .checked(trial -> TrialLimits.check(trial.readings()));

    /** What is written down at the bench, in its order: on the paper sheet and in the form. */
    public static final List<Column<Trial, ?>> AT_THE_BENCH = List.of(
            ID, TESTED_AT, OPERATOR, METER, ELEVATION, FINE, COARSE, SOAK, WATER, WITHDRAWN, GAUGE, H1, H2, LEAK,
            REMARKS);

    private static final Set<Column<Trial, ?>> OF_TYPE_A = Set.of(ELEVATION, H1, H2);
    private static final Set<Column<Trial, ?>> OF_TYPE_B = Set.of(WITHDRAWN, GAUGE);

    private TrialColumns() {}

    /** Returns whether a column is written down on a type of meter. */
    public static boolean isAsked(Column<Trial, ?> column, MeterType type) {
        return !(type == MeterType.A ? OF_TYPE_B : OF_TYPE_A).contains(column);
    }

    private static <V> Column<Trial, V> read(String name, CellType<V> type, Function<Readings, V> of) {
        return Column.needed(name, type, trial -> of.apply(trial.readings()));
    }

    private static <V> Column<Trial, V> readIfAny(String name, CellType<V> type, Function<Readings, Optional<V>> of) {
        return Column.any(name, type, trial -> of.apply(trial.readings()));
    }

    private static Trial made(Cells cells) {
        return new Trial(
                cells.get(ID),
                cells.get(MIX),
                cells.any(DETERMINATION).orElseGet(() -> Trial.noDetermination(cells.get(MIX))),
                cells.get(TESTED_AT),
                cells.get(OPERATOR),
                cells.get(METER),
                new Readings(
                        cells.get(METER_TYPE),
                        cells.get(BOWL),
                        cells.any(FINE),
                        cells.any(COARSE),
                        cells.any(SOAK),
                        cells.any(WATER),
                        cells.any(WITHDRAWN),
                        cells.any(GAUGE),
                        cells.any(H1),
                        cells.any(H2),
                        cells.get(LEAK)),
                cells.get(REMARKS),
                cells.any(KEPT_BECAUSE),
                cells.any(STRUCK_BECAUSE),
                cells.any(ELEVATION),
                cells.is(SIMULATED));
    }
}
