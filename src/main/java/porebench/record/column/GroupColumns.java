package porebench.record.column;

import java.math.BigDecimal;
import java.util.List;
import porebench.method.Limit;
import porebench.record.FactorGroup;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;

/** The columns of a group of mixes, and of its members. */
public final class GroupColumns {
    public static final Column<FactorGroup, GroupId> ID = Column.needed(
                    "group_id", CellType.word(GroupId::new, GroupId::text), FactorGroup::id)
            .called("id");
    public static final Column<FactorGroup, String> TITLE =
            Column.needed("title", CellType.text(), FactorGroup::title).headed("group_title");
    public static final Column<FactorGroup, MixId> TESTED_MIX = Column.needed(
                    "tested_mix_id", CellType.word(MixId::new, MixId::text), FactorGroup::testedMix)
            .called("testedMix");
    public static final Column<FactorGroup, BigDecimal> TOLERANCE = Column.needed(
                    "tolerance_pct", CellType.number(Limit.LIKENESS), FactorGroup::tolerancePercent)
            .called("tolerance");

    public static final Column<MixId, MixId> MEMBER =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), member -> member);
    public static final Columns<MixId> OF_MEMBER = Columns.of("factor_group_member", cells -> cells.get(MEMBER), MEMBER)
            .since(19);

    public static final Column<FactorGroup, List<MixId>> MEMBERS =
            Column.needed("members", CellType.several(new Part<>(OF_MEMBER, true)), FactorGroup::members);
    public static final Column<FactorGroup, String> REASON =
            Column.needed("reason", CellType.said(), FactorGroup::reason);

    public static final Columns<FactorGroup> ALL = Columns.of(
                    "factor_group", GroupColumns::made, ID, TITLE, TESTED_MIX, TOLERANCE, MEMBERS, REASON)
            .since(19)
            .checked(FactorGroup::check);

    private GroupColumns() {}

    private static FactorGroup made(Cells cells) {
        return new FactorGroup(
                        cells.get(ID),
                        cells.get(TITLE),
                        cells.get(TESTED_MIX),
                        cells.get(TOLERANCE),
                        cells.get(MEMBERS),
                        cells.get(REASON))
                .naming();
    }
}
