package porebench.store;

import porebench.record.CardPrint;
import porebench.record.RecordKind;
import porebench.record.id.MixId;

/** The table {@code card_print}. */
final class CardPrintTable implements RecordTable<CardPrint> {
    @Override
    public RecordKind kind() {
        return RecordKind.CARD_PRINT;
    }

    @Override
    public String name() {
        return "card_print";
    }

    @Override
    public StoredRecord rows(CardPrint print) {
        return StoredRecord.of(new StoredRow(name())
                .cell("mix_id", print.mixId().text())
                .cell("revision", print.revision())
                .cell("print_number", print.number())
                .cell("paper", print.paper())
                .cell("destination", print.destination()));
    }

    @Override
    public CardPrint value(StoredRecord rows) {
        StoredRow row = rows.row();
        return new CardPrint(
                new MixId(row.text("mix_id")),
                row.count("revision"),
                row.count("print_number"),
                row.text("paper"),
                row.text("destination"));
    }
}
