package porebench.record.column;

import java.math.BigDecimal;
import porebench.method.Limit;
import porebench.method.MeterType;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.Meter;
import porebench.record.id.MeterId;

/** The columns of a pressure air meter with its bowl. */
public final class MeterColumns {
    public static final Column<Meter, MeterId> ID = Column.needed(
                    "meter_id", CellType.word(MeterId::new, MeterId::text), Meter::id)
            .called("id");
    public static final Column<Meter, MeterType> TYPE = Column.needed(
                    "meter_type", CellType.choice(MeterType.values(), MeterType::name), Meter::type)
            .called("type");
    public static final Column<Meter, String> SERIAL = Column.needed("serial", CellType.text(), Meter::serial);
    public static final Column<Meter, Typed<Volume>> BOWL =
            Column.needed("bowl_volume", BowlCell.TYPE, Meter::bowl).called("bowl");
    public static final Column<Meter, BigDecimal> DIVISION = Column.needed(
                    "division_pct", CellType.number(Limit.DIVISION), Meter::divisionPercent)
            .called("division");
    public static final Column<Meter, BigDecimal> SCALE_TOP = Column.needed(
                    "scale_top_pct", CellType.number(Limit.SCALE_TOP), Meter::scaleTopPercent)
            .called("scaleTop");
    public static final Column<Meter, Boolean> IN_SERVICE =
            Column.needed("in_service", CellType.yesNo(), Meter::inService);
    public static final Column<Meter, String> REMARKS =
            Column.needed("remarks", CellType.text(), Meter::remarks).extra();

    public static final Columns<Meter> ALL = Columns.of(
                    "meter", MeterColumns::made, ID, TYPE, SERIAL, BOWL, DIVISION, SCALE_TOP, IN_SERVICE, REMARKS)
            .checked(meter -> meter.checkScale().stream().toList());

    private MeterColumns() {}

    private static Meter made(Cells cells) {
        return new Meter(
                cells.get(ID),
                cells.get(TYPE),
                cells.get(SERIAL),
                cells.get(BOWL),
                cells.get(DIVISION),
                cells.get(SCALE_TOP),
                cells.get(IN_SERVICE),
                cells.get(REMARKS));
    }
}
