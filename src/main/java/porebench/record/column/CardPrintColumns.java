package porebench.record.column;

import java.time.LocalDateTime;
import porebench.record.CardPrint;
import porebench.record.id.MixId;

/** The columns of a factor card that left the laboratory. */
public final class CardPrintColumns {
    public static final Column<CardPrint, MixId> MIX =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), CardPrint::mixId);
    public static final Column<CardPrint, Integer> REVISION =
            Column.needed("revision", CellType.whole(1), CardPrint::revision);
    public static final Column<CardPrint, Integer> NUMBER =
            Column.needed("print_number", CellType.whole(1), CardPrint::number).headed("number");
    public static final Column<CardPrint, String> PAPER = Column.needed("paper", CellType.text(), CardPrint::paper);
    public static final Column<CardPrint, String> DESTINATION =
            Column.needed("destination", CellType.text(), CardPrint::destination);

    public static final Column<CardPrint, LocalDateTime> PRINTED_AT = Column.any(
                    "printed_at", CellType.moment(), CardPrint::printedAt)
            .since(24)
            .extra();

    public static final Columns<CardPrint> ALL =
            Columns.of("card_print", CardPrintColumns::made, MIX, REVISION, NUMBER, PAPER, DESTINATION, PRINTED_AT);

    private CardPrintColumns() {}

    private static CardPrint made(Cells cells) {
        return new CardPrint(
                cells.get(MIX),
                cells.get(REVISION),
                cells.get(NUMBER),
                cells.get(PAPER),
                cells.get(DESTINATION),
                cells.any(PRINTED_AT));
    }
}
