package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import porebench.quantity.Density;
import porebench.quantity.DensityUnit;
import porebench.quantity.Typed;
import porebench.record.FieldReading;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.ReadingId;

/** The columns of a field reading. */
public final class FieldReadingColumns {
    /** Temperature of fresh concrete, in C: what can be meant. Common practice, no source. */
    private static final NumberRange CONCRETE = NumberRange.of("-10", "60");

    public static final Column<FieldReading, ReadingId> ID = Column.needed(
                    "reading_id", CellType.word(ReadingId::new, ReadingId::text), FieldReading::id)
            .called("id");
    public static final Column<FieldReading, MixId> MIX =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), FieldReading::mixId);
    public static final Column<FieldReading, LocalDateTime> READ_AT =
            Column.needed("read_at", CellType.moment(), FieldReading::readAt);
    public static final Column<FieldReading, String> TRUCK =
            Column.needed("truck", CellType.text(), FieldReading::truck);
    public static final Column<FieldReading, MeterId> METER = Column.any(
                    "meter_id", CellType.word(MeterId::new, MeterId::text), FieldReading::meterId)
            .called("meter");
    public static final Column<FieldReading, BigDecimal> GAUGE = Column.needed(
                    "gauge_pct", CellType.number(NumberRange.READING), FieldReading::gaugePercent)
            .called("gauge");
    public static final Column<FieldReading, Typed<Density>> DENSITY = Column.any(
            "density", CellType.quantity(DensityUnit.values(), NumberRange.NOT_NEGATIVE), FieldReading::density);
    public static final Column<FieldReading, BigDecimal> TEMPERATURE = Column.any(
                    "temperature_c", CellType.number(CONCRETE), FieldReading::temperatureCelsius)
            .called("temperature");
    public static final Column<FieldReading, String> REMARKS =
            Column.needed("remarks", CellType.text(), FieldReading::remarks);
    public static final Column<FieldReading, String> KEPT_BECAUSE = Column.any(
                    "kept_because", CellType.text(), FieldReading::keptBecause)
            .extra();
    public static final Column<FieldReading, String> STRUCK_BECAUSE = Column.any(
                    "struck_because", CellType.text(), FieldReading::struckBecause)
            .extra();

    public static final Columns<FieldReading> ALL = Columns.of(
                    "field_reading",
                    FieldReadingColumns::made,
                    ID,
                    MIX,
                    READ_AT,
                    TRUCK,
                    METER,
                    GAUGE,
                    DENSITY,
                    TEMPERATURE,
                    REMARKS,
                    KEPT_BECAUSE,
                    STRUCK_BECAUSE)
            .since(23);

    private FieldReadingColumns() {}

    private static FieldReading made(Cells cells) {
        return new FieldReading(
                cells.get(ID),
                cells.get(MIX),
                cells.get(READ_AT),
                cells.get(TRUCK),
                cells.any(METER),
                cells.get(GAUGE),
                cells.any(DENSITY),
                cells.any(TEMPERATURE),
                cells.get(REMARKS),
                cells.any(KEPT_BECAUSE),
                cells.any(STRUCK_BECAUSE));
    }
}
