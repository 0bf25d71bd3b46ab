package porebench.exchange;

import java.util.List;
import java.util.Optional;
import porebench.record.Laboratory;

/** {@code laboratory.csv}: the one laboratory whose book it is. */
final class LaboratoryFormat implements Format.RowByRow<Laboratory> {
    private static final Columns COLUMNS = Columns.of("laboratory_name,laboratory_address");

    @Override
    public Class<Laboratory> type() {
        return Laboratory.class;
    }

    @Override
    public String fileName() {
        return "laboratory.csv";
    }

    @Override
    public Columns columns() {
        return COLUMNS;
    }

    @Override
    public List<String> key() {
        return List.of();
    }

    @Override
    public Optional<Laboratory> read(Entry entry) {
        return entry.optionalText("laboratory_name")
                .or(() -> entry.word("laboratory_name"))
                .map(name -> new Laboratory(name, entry.text("laboratory_address")));
    }

    @Override
    public List<String> row(Laboratory value) {
        return List.of(value.name(), value.address());
    }
}
