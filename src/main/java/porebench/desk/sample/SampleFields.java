package porebench.desk.sample;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.column.CellType;
import porebench.record.column.Column;
import porebench.record.column.NumberRange;
import porebench.record.id.MeterId;

/** What is chosen and typed on the correction sample page, a column a field; nothing of it is kept. */
final class SampleFields {
    /** What leads the fields of today's moisture, which the number of an aggregate follows. */
    static final String MOISTURE = "moisture.";

    /** The meter from the register; empty when the bowl volume is typed. */
    static final Column<SampleReading, MeterId> METER = field("meter", CellType.word(MeterId::new, MeterId::text));

    static final Column<SampleReading, Typed<Volume>> BOWL = field(
            "bowl",
            CellType.quantity(
                    new VolumeUnit[] {
                        VolumeUnit.LITRE, VolumeUnit.MILLILITRE, VolumeUnit.CUBIC_FOOT, VolumeUnit.CUBIC_INCH
                    },
                    NumberRange.ANY));
    /** The type of meter when none is chosen from the register. */
    static final Column<SampleReading, MeterType> METER_TYPE =
            field("meter_type", CellType.choice(List.of(MeterType.A, MeterType.B), MeterType::name));
    /** How many trials are to be made. */
    static final Column<SampleReading, String> TRIALS = field("trials", CellType.text());
    /** What is fetched beyond them, in %. */
    static final Column<SampleReading, BigDecimal> SPARE =
            field("spare", CellType.number(NumberRange.ANY)).blankMeans(BigDecimal.ZERO);
    /** The unit in which masses are shown. */
    static final Column<SampleReading, MassUnit> MASS_UNIT = field(
            "mass_unit",
            CellType.choice(
                    List.of(MassUnit.GRAM, MassUnit.KILOGRAM, MassUnit.POUND, MassUnit.OUNCE), MassUnit::symbol));

    /** All but the moistures, in the order in which people meet them. */
    static final List<Column<SampleReading, ?>> ALL = List.of(METER, BOWL, METER_TYPE, TRIALS, SPARE, MASS_UNIT);

    private SampleFields() {}

    /** Returns the column of today's total moisture of an aggregate in %, counted from 0; empty for as designed. */
    static Column<SampleReading, BigDecimal> moisture(int aggregate) {
        return field(MOISTURE + aggregate, CellType.number(NumberRange.ANY));
    }

    private static <V> Column<SampleReading, V> field(String name, CellType<V> type) {
        return Column.any(name, type, any -> Optional.empty());
    }
}
