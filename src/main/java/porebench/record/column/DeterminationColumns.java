package porebench.record.column;

import java.time.LocalDate;
import java.util.List;
import porebench.record.Determination;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/** The columns of a determination. */
public final class DeterminationColumns {
    public static final Column<Determination, DeterminationId> ID = Column.needed(
            "determination_id", CellType.word(DeterminationId::new, DeterminationId::text), Determination::id);
    public static final Column<Determination, MixId> MIX =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), Determination::mixId);
    public static final Column<Determination, Integer> MIX_VERSION =
            Column.needed("mix_version", CellType.whole(1), Determination::mixVersion);
    public static final Column<Determination, LocalDate> OPENED_ON =
            Column.needed("opened_on", CellType.day(), Determination::openedOn);
    public static final Column<Determination, String> PURPOSE =
            Column.needed("purpose", CellType.text(), Determination::purpose).extra();
    public static final Column<Determination, List<IdVersion<SourceId>>> SOURCES =
            IdVersion.<Determination, SourceId>column(
                            "source_versions",
                            "determination_source",
                            "source",
                            CellType.word(SourceId::new, SourceId::text),
                            Determination::sourceVersions,
                            1)
                    .extra();
    public static final Column<Determination, Boolean> SIMULATED =
            Column.<Determination>mark("simulated", Determination::simulated).since(5);

    public static final Columns<Determination> ALL = Columns.of(
            "determination", DeterminationColumns::made, ID, MIX, MIX_VERSION, OPENED_ON, PURPOSE, SOURCES, SIMULATED);

    private DeterminationColumns() {}

    private static Determination made(Cells cells) {
        return new Determination(
                cells.get(ID),
                cells.get(MIX),
                cells.get(MIX_VERSION),
                IdVersion.byId(cells.list(SOURCES)),
                cells.get(OPENED_ON),
                cells.get(PURPOSE),
                cells.is(SIMULATED));
    }
}
