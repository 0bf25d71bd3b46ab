package porebench.store;

import java.time.LocalDate;
import java.util.List;
import porebench.record.Determination;
import porebench.record.DeterminationId;
import porebench.record.MixId;
import porebench.record.RecordKind;

/** The tables {@code determination} and {@code determination_source}. */
final class DeterminationTable implements RecordTable<Determination> {
    private static final String SOURCE = "determination_source";

    @Override
    public RecordKind kind() {
        return RecordKind.DETERMINATION;
    }

    @Override
    public String name() {
        return "determination";
    }

    @Override
    public List<String> partTables() {
        return List.of(SOURCE);
    }

    @Override
    public StoredRecord rows(Determination determination) {
        StoredRow row = new StoredRow(name())
                .cell("determination_id", determination.id().text())
                .cell("mix_id", determination.mixId().text())
                .cell("mix_version", determination.mixVersion())
                .cell("opened_on", determination.openedOn().toString())
                .cell("purpose", determination.purpose());
        return new StoredRecord(row, SourceVersions.rows(SOURCE, determination.sourceVersions()));
    }

    @Override
    public Determination value(StoredRecord rows) {
        StoredRow row = rows.row();
        return new Determination(
                new DeterminationId(row.text("determination_id")),
                new MixId(row.text("mix_id")),
                row.count("mix_version"),
                SourceVersions.of(rows.parts()),
                LocalDate.parse(row.text("opened_on")),
                row.text("purpose"));
    }
}
