package porebench.port;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.evidence.paper.FieldList;
import porebench.method.air.AirVerdict;
import porebench.quantity.DensityUnit;
import porebench.record.FieldReading;
import porebench.record.column.CellShape.Kind;
import porebench.record.column.StatedColumn;

/** A list of field readings as figures, to be written as CSV: the same lines as on paper, a reading a row. */
public final class ReadingsTable {
    private static final StatedColumn UNIT = StatedColumn.any(Kind.CHOICE, "density_unit")
            .oneOf(Arrays.stream(DensityUnit.values()).map(DensityUnit::symbol).toList());

    private static final StatedColumn VERDICT = StatedColumn.filled(Kind.CHOICE, "verdict")
            .oneOf(Stream.concat(
                            Arrays.stream(AirVerdict.values()).map(AirVerdict::symbol),
                            Stream.of(FieldList.NOT_JUDGED, FieldList.MARKED, FieldList.STRUCK))
                    .toList());

    private static final ListColumns<Of> COLUMNS = new ListColumns<Of>()
            .filled("reading_id", of -> of.reading().recordId())
            .filled("mix_id", of -> of.reading().mixId().text())
            .column(
                    StatedColumn.filled(Kind.MOMENT, "read_at"),
                    of -> of.reading().readAt().toString())
            .text("truck", of -> of.reading().truck())
            .text(
                    "meter_id",
                    of -> of.reading().meterId().map(meter -> meter.text()).orElse(""))
            .column(
                    StatedColumn.filled(Kind.NUMBER, "gauge_pct").in("%"),
                    of -> of.reading().gaugePercent().toPlainString())
            .number(
                    StatedColumn.any(Kind.NUMBER, "density").unitIn(UNIT.name()),
                    of -> of.reading().density().map(density -> density.number()))
            .column(
                    UNIT,
                    of -> of.reading()
                            .density()
                            .map(density -> density.unit().symbol())
                            .orElse(""))
            .number(
                    StatedColumn.any(Kind.NUMBER, "temperature_c").in("C"),
                    of -> of.reading().temperatureCelsius())
            .text("remarks", of -> of.reading().remarks())
            .any(Kind.WHOLE, "revision", of -> of.air().map(FieldList.Air::revision))
            .percent("factor_pct_air", of -> of.air().map(FieldList.Air::factorPercent))
            .percent("air_pct", of -> of.air().map(FieldList.Air::reportedPercent))
            .percent("expanded_u_pct", of -> of.air().flatMap(FieldList.Air::expandedPercent))
            .percent(
                    "full_mixture_air_pct",
                    of -> of.air().flatMap(FieldList.Air::spread).map(spread -> spread.fullMixturePercent()))
            .percent(
                    "mortar_air_pct",
                    of -> of.air().flatMap(FieldList.Air::spread).map(spread -> spread.mortarPercent()))
            .column(VERDICT, of -> of.line().verdict())
            .number(StatedColumn.any(Kind.NUMBER, "guard_standard_uncertainties"), Of::guard)
            .several("notes", of -> of.line().notes())
            .text("kept_because", of -> of.reading().keptBecause().orElse(""))
            .text("struck_because", of -> of.reading().struckBecause().orElse(""));

    private ReadingsTable() {}

    private record Of(FieldList.Line line, Optional<BigDecimal> guard) {
        FieldReading reading() {
            return line.reading();
        }

        Optional<FieldList.Air> air() {
            return line.air();
        }
    }

    /** Returns its columns, as they are in a book that is not for training. */
    public static List<StatedColumn> columns() {
        return COLUMNS.stated();
    }

    /** Returns the figures of a list; numbers have a decimal point. Of a training book every row says so. */
    public static DataTable of(FieldList list) {
        DataTable table = COLUMNS.table(
                list.lines().stream().map(line -> new Of(line, list.guard())).toList());
        return list.isTraining() ? table.simulated() : table;
    }
}
