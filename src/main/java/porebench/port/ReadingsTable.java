package porebench.port;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.evidence.paper.FieldList;
import porebench.record.FieldReading;

/** A list of field readings as figures, to be written as CSV: the same lines as on paper, a reading a row. */
public final class ReadingsTable {
    private static final String BETWEEN = "; ";

    private static final List<String> HEADING = List.of(
            "reading_id",
            "mix_id",
            "read_at",
            "truck",
            "meter_id",
            "gauge_pct",
            "density",
            "density_unit",
            "temperature_c",
            "remarks",
            "revision",
            "factor_pct_air",
            "air_pct",
            "expanded_u_pct",
            "full_mixture_air_pct",
            "mortar_air_pct",
            "verdict",
            "guard_standard_uncertainties",
            "notes",
            "kept_because",
            "struck_because");

    private ReadingsTable() {}

    /** Returns the figures of a list; numbers have a decimal point. Of a training book every row says so. */
    public static DataTable of(FieldList list) {
        DataTable table = new DataTable(
                HEADING,
                list.lines().stream()
                        .map(line -> cells(line, or(list.guard().map(BigDecimal::toPlainString))))
                        .toList());
        return list.isTraining() ? table.simulated() : table;
    }

    private static List<String> cells(FieldList.Line line, String guard) {
        FieldReading reading = line.reading();
        Optional<FieldList.Air> air = line.air();
        return List.of(
                reading.recordId(),
                reading.mixId().text(),
                reading.readAt().toString(),
                reading.truck(),
                or(reading.meterId().map(meter -> meter.text())),
                reading.gaugePercent().toPlainString(),
                or(reading.density().map(density -> density.number().toPlainString())),
                or(reading.density().map(density -> density.unit().symbol())),
                or(reading.temperatureCelsius().map(BigDecimal::toPlainString)),
                reading.remarks(),
                or(air.map(FieldList.Air::revision)),
                or(air.map(made -> made.factorPercent().toPlainString())),
                or(air.map(made -> made.reportedPercent().toPlainString())),
                or(air.flatMap(FieldList.Air::expandedPercent).map(BigDecimal::toPlainString)),
                or(air.flatMap(FieldList.Air::spread)
                        .map(spread -> spread.fullMixturePercent().toPlainString())),
                or(air.flatMap(FieldList.Air::spread)
                        .map(spread -> spread.mortarPercent().toPlainString())),
                line.verdict(),
                guard,
                String.join(BETWEEN, line.notes()),
                reading.keptBecause().orElse(""),
                reading.struckBecause().orElse(""));
    }

    private static String or(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }
}
