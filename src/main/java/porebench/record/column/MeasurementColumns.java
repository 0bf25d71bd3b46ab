package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import porebench.method.Limit;
import porebench.record.SourceMeasurement;
import porebench.record.id.MeasurementId;
import porebench.record.id.SourceId;

/** The columns of a measurement of a source. */
public final class MeasurementColumns {
    public static final Column<SourceMeasurement, MeasurementId> ID = Column.needed(
                    "measurement_id", CellType.word(MeasurementId::new, MeasurementId::text), SourceMeasurement::id)
            .called("id");
    public static final Column<SourceMeasurement, SourceId> SOURCE =
            Column.needed("source_id", CellType.word(SourceId::new, SourceId::text), SourceMeasurement::sourceId);
    public static final Column<SourceMeasurement, LocalDate> TESTED_ON =
            Column.needed("tested_on", CellType.day(), SourceMeasurement::testedOn);
    public static final Column<SourceMeasurement, String> TESTED_BY =
            Column.needed("tested_by", CellType.said(), SourceMeasurement::testedBy);
    public static final Column<SourceMeasurement, String> LOT =
            Column.needed("lot", CellType.text(), SourceMeasurement::lot);
    public static final Column<SourceMeasurement, BigDecimal> RELATIVE_DENSITY =
            Column.any("relative_density", CellType.number(Limit.RELATIVE_DENSITY), SourceMeasurement::relativeDensity);
    public static final Column<SourceMeasurement, BigDecimal> ABSORPTION = Column.any(
                    "absorption_pct", CellType.number(Limit.ABSORPTION), SourceMeasurement::absorptionPercent)
            .called("absorption");
    public static final Column<SourceMeasurement, BigDecimal> RETAINED = Column.any(
                    "retained_37_5mm_pct",
                    CellType.number(NumberRange.of("0", "100")),
                    SourceMeasurement::retainedPercent)
            .called("retained");
    public static final Column<SourceMeasurement, String> REMARKS = Column.needed(
                    "remarks", CellType.text(), SourceMeasurement::remarks)
            .extra();

    public static final Columns<SourceMeasurement> ALL = Columns.of(
                    "source_measurement",
                    MeasurementColumns::made,
                    ID,
                    SOURCE,
                    TESTED_ON,
                    TESTED_BY,
                    LOT,
                    RELATIVE_DENSITY,
                    ABSORPTION,
                    RETAINED,
                    REMARKS)
            .since(16);

    private MeasurementColumns() {}

    private static SourceMeasurement made(Cells cells) {
        return new SourceMeasurement(
                cells.get(ID),
                cells.get(SOURCE),
                cells.get(TESTED_ON),
                cells.get(TESTED_BY),
                cells.get(LOT),
                cells.any(RELATIVE_DENSITY),
                cells.any(ABSORPTION),
                cells.any(RETAINED),
                cells.get(REMARKS));
    }
}
