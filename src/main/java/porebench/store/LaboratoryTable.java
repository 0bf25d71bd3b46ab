package porebench.store;

import porebench.record.Laboratory;
import porebench.record.RecordKind;

/** The table {@code laboratory}. */
final class LaboratoryTable implements RecordTable<Laboratory> {
    private static final String TRAINING = "training";

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
        StoredRow row = new StoredRow(name()).cell("name", laboratory.name()).cell("address", laboratory.address());
        if (laboratory.training()) {
            row.flag(TRAINING, true);
        }
        return StoredRecord.of(row);
    }

    @Override
    public Laboratory value(StoredRecord rows) {
        StoredRow row = rows.row();
        return new Laboratory(row.text("name"), row.text("address"), row.has(TRAINING) && row.flag(TRAINING));
    }
}
