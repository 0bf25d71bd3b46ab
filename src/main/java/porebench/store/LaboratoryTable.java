package porebench.store;

import porebench.record.Laboratory;
import porebench.record.RecordKind;

/** The table {@code laboratory}. */
final class LaboratoryTable implements RecordTable<Laboratory> {
    @Override
    public RecordKind kind() {
        return RecordKind.LABORATORY;
    }

    @Override
    public String name() {
        return "laboratory";
    }

    @Override
    public StoredRecord rows(Laboratory laboratory) {
        return StoredRecord.of(
                new StoredRow(name()).cell("name", laboratory.name()).cell("address", laboratory.address()));
    }

    @Override
    public Laboratory value(StoredRecord rows) {
        return new Laboratory(rows.row().text("name"), rows.row().text("address"));
    }
}
