package porebench.exchange;

import java.util.List;
import java.util.Optional;
import porebench.record.Laboratory;

/** {@code laboratory.csv}: the one laboratory whose book it is. */
final class LaboratoryFormat implements Format.RowByRow<Laboratory> {
    private static final Columns COLUMNS = Columns.of("laboratory_name,laboratory_address", "training");

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
        entry.word("laboratory_name");
        Optional<String> name = entry.optionalText("laboratory_name");
        Optional<Boolean> training = entry.optionalYesNo("training").or(() -> Optional.of(false));
        return name.isPresent() && training.isPresent()
                ? Optional.of(new Laboratory(name.get(), entry.text("laboratory_address"), training.get()))
                : Optional.empty();
    }

    @Override
    public List<String> row(Laboratory value) {
        return List.of(value.name(), value.address(), value.training() ? Entry.yesNoWord(true) : "");
    }
}
