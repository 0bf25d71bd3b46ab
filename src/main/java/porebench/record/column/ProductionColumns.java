package porebench.record.column;

import java.time.LocalDate;
import porebench.quantity.BulkMassUnit;
import porebench.quantity.Mass;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.Production;
import porebench.record.id.MixId;
import porebench.record.id.ProductionId;

/** The columns of what was made of a mix in a spell. */
public final class ProductionColumns {
    private static final VolumeUnit[] VOLUMES = {VolumeUnit.CUBIC_METRE, VolumeUnit.CUBIC_YARD};

    public static final Column<Production, ProductionId> ID = Column.needed(
                    "production_id", CellType.word(ProductionId::new, ProductionId::text), Production::id)
            .called("id");
    public static final Column<Production, MixId> MIX =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), Production::mixId);
    public static final Column<Production, LocalDate> FIRST_DAY =
            Column.needed("first_day", CellType.day(), Production::firstDay);
    public static final Column<Production, LocalDate> LAST_DAY =
            Column.needed("last_day", CellType.day(), Production::lastDay);
    public static final Column<Production, Integer> PRODUCTION_DAYS =
            Column.any("production_days", CellType.whole(0), Production::productionDays);
    public static final Column<Production, Integer> LOADS = Column.any("loads", CellType.whole(0), Production::loads);
    public static final Column<Production, Typed<Volume>> VOLUME = Column.any(
                    "concrete_volume", CellType.quantity(VOLUMES, NumberRange.NOT_NEGATIVE), Production::volume)
            .called("volume");
    public static final Column<Production, Typed<Mass>> MASS = Column.any(
                    "concrete_mass",
                    CellType.quantity(BulkMassUnit.values(), NumberRange.NOT_NEGATIVE),
                    Production::mass)
            .called("mass");
    public static final Column<Production, String> REPORTED_BY =
            Column.needed("reported_by", CellType.said(), Production::reportedBy);
    public static final Column<Production, String> REMARKS =
            Column.needed("remarks", CellType.text(), Production::remarks).extra();

    public static final Columns<Production> ALL = Columns.of(
                    "production",
                    ProductionColumns::made,
                    ID,
                    MIX,
                    FIRST_DAY,
                    LAST_DAY,
                    PRODUCTION_DAYS,
                    LOADS,
                    VOLUME,
                    MASS,
                    REPORTED_BY,
                    REMARKS)
            .since(18);

    private ProductionColumns() {}

    private static Production made(Cells cells) {
        return new Production(
                cells.get(ID),
                cells.get(MIX),
                cells.get(FIRST_DAY),
                cells.get(LAST_DAY),
                cells.any(PRODUCTION_DAYS),
                cells.any(LOADS),
                cells.any(VOLUME),
                cells.any(MASS),
                cells.get(REPORTED_BY),
                cells.get(REMARKS));
    }
}
