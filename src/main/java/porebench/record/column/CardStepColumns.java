package porebench.record.column;

import java.time.LocalDateTime;
import java.util.Optional;
import porebench.quantity.Symbolic;
import porebench.record.CardHolder;
import porebench.record.CardStep;
import porebench.record.id.MixId;

/** The columns of what happened to a factor card. */
public final class CardStepColumns {
    public static final Column<CardStep, MixId> MIX =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), CardStep::mixId);
    public static final Column<CardStep, Integer> REVISION =
            Column.needed("revision", CellType.whole(1), CardStep::revision);
    public static final Column<CardStep, Integer> PRINT =
            Column.needed("print_number", CellType.whole(1), CardStep::print);
    public static final Column<CardStep, Integer> NUMBER =
            Column.needed("step_number", CellType.whole(1), CardStep::number);
    public static final Column<CardStep, CardStep.Act> ACT =
            Column.needed("act", CellType.choice(CardStep.Act.values(), Symbolic::symbol), CardStep::act);
    public static final Column<CardStep, String> HOLDER =
            Column.any("holder", CellType.word(), step -> step.holder().map(CardHolder::name));
    public static final Column<CardStep, CardHolder.Kind> HOLDER_KIND = Column.any(
                    "holder_kind",
                    CellType.choice(CardHolder.Kind.values(), Symbolic::symbol),
                    (CardStep step) -> step.holder().map(CardHolder::kind))
            .neededWhere(from -> from.states(HOLDER));
    public static final Column<CardStep, LocalDateTime> AT =
            Column.needed("happened_at", CellType.moment(), CardStep::at);
    public static final Column<CardStep, String> BY = Column.needed("said_by", CellType.said(), CardStep::by);
    public static final Column<CardStep, String> REMARK = Column.needed("remark", CellType.text(), CardStep::remark);

    public static final Columns<CardStep> ALL = Columns.of(
                    "card_step",
                    CardStepColumns::made,
                    MIX,
                    REVISION,
                    PRINT,
                    NUMBER,
                    ACT,
                    HOLDER_KIND,
                    HOLDER,
                    AT,
                    BY,
                    REMARK)
            .since(24);

    private CardStepColumns() {}

    private static CardStep made(Cells cells) {
        Optional<CardHolder> holder =
                cells.any(HOLDER).flatMap(name -> cells.any(HOLDER_KIND).map(kind -> new CardHolder(kind, name)));
        return new CardStep(
                cells.get(MIX),
                cells.get(REVISION),
                cells.get(PRINT),
                cells.get(NUMBER),
                cells.get(ACT),
                holder,
                cells.get(AT),
                cells.get(BY),
                cells.get(REMARK));
    }
}
