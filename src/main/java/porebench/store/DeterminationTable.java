package porebench.store;

import java.time.LocalDate;
import porebench.record.Determination;
import porebench.record.DeterminationId;
import porebench.record.MixId;
import porebench.record.RecordKind;

/** The table {@code determination}. */
final class DeterminationTable implements RecordTable<Determination> {
    @Override
    public RecordKind kind() {
        return RecordKind.DETERMINATION;
    }

    @Override
    public String name() {
        return "determination";
    }

    @Override
    public StoredRecord rows(Determination determination) {
        return StoredRecord.of(new StoredRow(name())
                .cell("determination_id", determination.id().text())
                .cell("mix_id", determination.mixId().text())
                .cell("mix_version", determination.mixVersion())
                .cell("opened_on", determination.openedOn().toString())
                .cell("purpose", determination.purpose()));
    }

    @Override
    public Determination value(StoredRecord rows) {
        StoredRow row = rows.row();
        return new Determination(
                new DeterminationId(row.text("determination_id")),
                new MixId(row.text("mix_id")),
                row.count("mix_version"),
                LocalDate.parse(row.text("opened_on")),
                row.text("purpose"));
    }
}
