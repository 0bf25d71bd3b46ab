package porebench.record.column;

import porebench.record.Laboratory;

/** The columns of the laboratory whose book it is. */
public final class LaboratoryColumns {
    public static final Column<Laboratory, String> NAME =
            Column.needed("name", CellType.said(), Laboratory::name).headed("laboratory_name");
    public static final Column<Laboratory, String> ADDRESS =
            Column.needed("address", CellType.text(), Laboratory::address).headed("laboratory_address");
    public static final Column<Laboratory, Boolean> TRAINING =
            Column.<Laboratory>mark("training", Laboratory::training).since(3);

    public static final Columns<Laboratory> ALL =
            Columns.of("laboratory", LaboratoryColumns::made, NAME, ADDRESS, TRAINING);

    private LaboratoryColumns() {}

    private static Laboratory made(Cells cells) {
        return new Laboratory(cells.get(NAME), cells.get(ADDRESS), cells.is(TRAINING));
    }
}
