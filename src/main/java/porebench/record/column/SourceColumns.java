package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import porebench.method.Limit;
import porebench.method.Role;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.id.SourceId;

/** The columns of a source of aggregate. */
public final class SourceColumns {
    public static final Column<Source, SourceId> ID = Column.needed(
                    "source_id", CellType.word(SourceId::new, SourceId::text), Source::id)
            .called("id");
    public static final Column<Source, String> NAME = Column.needed("name", CellType.text(), Source::name);
    public static final Column<Source, Role> ROLE =
            Column.needed("role", CellType.choice(List.of(Role.FINE, Role.COARSE), Role::symbol), Source::role);
    public static final Column<Source, String> PLACE = Column.needed("place", CellType.text(), Source::place);
    public static final Column<Source, String> LEDGE = Column.needed("ledge", CellType.text(), Source::ledge);
    public static final Column<Source, BigDecimal> RELATIVE_DENSITY =
            Column.any("relative_density", CellType.number(Limit.RELATIVE_DENSITY), Source::relativeDensity);
    public static final Column<Source, BigDecimal> ABSORPTION = Column.any(
                    "absorption_pct", CellType.number(Limit.ABSORPTION), Source::absorptionPercent)
            .called("absorption");
    public static final Column<Source, String> REMARKS =
            Column.needed("remarks", CellType.text(), Source::remarks).extra();

    public static final Column<Source, String> PRODUCER =
            Column.any("producer", CellType.said(), Source::producer).since(15).extra();
    public static final Column<Source, String> PRODUCT =
            Column.any("product", CellType.said(), Source::product).since(15).extra();
    public static final Column<Source, String> SIZE =
            Column.any("size", CellType.said(), Source::size).since(15).extra();
    public static final Column<Source, BigDecimal> RETAINED = Column.any(
                    "retained_37_5mm_pct", CellType.number(NumberRange.of("0", "100")), Source::retainedPercent)
            .called("retained")
            .since(15)
            .extra();
    public static final Column<Source, SourceStep> STEP = Column.any(
                    "step", CellType.choice(SourceStep.values(), SourceStep::symbol), Source::step)
            .since(15)
            .extra();
    public static final Column<Source, LocalDate> CHANGED_ON = Column.any(
                    "changed_on", CellType.day(), Source::changedOn)
            .since(15)
            .extra();
    public static final Column<Source, String> REASON =
            Column.any("reason", CellType.said(), Source::reason).since(15).extra();

    public static final Columns<Source> ALL = Columns.of(
            "source",
            SourceColumns::made,
            ID,
            NAME,
            ROLE,
            PLACE,
            LEDGE,
            RELATIVE_DENSITY,
            ABSORPTION,
            REMARKS,
            PRODUCER,
            PRODUCT,
            SIZE,
            RETAINED,
            STEP,
            CHANGED_ON,
            REASON);

    private SourceColumns() {}

    private static Source made(Cells cells) {
        return new Source(
                cells.get(ID),
                cells.get(NAME),
                cells.get(ROLE),
                cells.get(PLACE),
                cells.get(LEDGE),
                cells.any(RELATIVE_DENSITY),
                cells.any(ABSORPTION),
                cells.get(REMARKS),
                cells.any(PRODUCER),
                cells.any(PRODUCT),
                cells.any(SIZE),
                cells.any(RETAINED),
                cells.any(STEP),
                cells.any(CHANGED_ON),
                cells.any(REASON));
    }
}
