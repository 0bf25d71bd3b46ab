package porebench.exchange;

import java.util.List;
import java.util.Optional;
import porebench.record.CardPrint;
import porebench.record.id.MixId;

/** {@code card-prints.csv}: one row a factor card that left the laboratory. */
final class CardPrintFormat implements Format.RowByRow<CardPrint> {
    private static final Columns COLUMNS = Columns.of("mix_id,revision,number,paper,destination");

    @Override
    public Class<CardPrint> type() {
        return CardPrint.class;
    }

    @Override
    public String fileName() {
        return "card-prints.csv";
    }

    @Override
    public Columns columns() {
        return COLUMNS;
    }

    @Override
    public List<String> key() {
        return List.of("mix_id", "revision", "number");
    }

    @Override
    public Optional<CardPrint> read(Entry entry) {
        Optional<MixId> mixId = entry.id("mix_id", MixId::new);
        Optional<Integer> revision = entry.whole("revision", 1);
        Optional<Integer> number = entry.whole("number", 1);
        if (mixId.isEmpty() || revision.isEmpty() || number.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CardPrint(
                mixId.get(), revision.get(), number.get(), entry.text("paper"), entry.text("destination")));
    }

    @Override
    public List<String> row(CardPrint value) {
        return List.of(
                value.mixId().text(),
                Integer.toString(value.revision()),
                Integer.toString(value.number()),
                value.paper(),
                value.destination());
    }
}
