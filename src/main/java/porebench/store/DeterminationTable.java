package porebench.store;

import java.time.LocalDate;
import java.util.List;
import porebench.record.Determination;
import porebench.record.RecordKind;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/** The tables {@code determination} and {@code determination_source}. */
final class DeterminationTable implements RecordTable<Determination> {
    private static final IdVersions<SourceId> SOURCES =
            new IdVersions<>("determination_source", "source_id", "source_version", SourceId::new, SourceId::text);

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
        return List.of(SOURCES.table());
    }

    @Override
    public StoredRecord rows(Determination determination) {
        StoredRow row = new StoredRow(name())
                .cell("determination_id", determination.id().text())
                .cell("mix_id", determination.mixId().text())
                .cell("mix_version", determination.mixVersion())
                .cell("opened_on", determination.openedOn().toString())
                .cell("purpose", determination.purpose());
        if (determination.simulated()) {
            row.flag("simulated", true);
        }
        return new StoredRecord(row, SOURCES.rows(determination.sourceVersions()));
    }

    @Override
    public Determination value(StoredRecord rows) {
        StoredRow row = rows.row();
        return new Determination(
                new DeterminationId(row.text("determination_id")),
                new MixId(row.text("mix_id")),
                row.count("mix_version"),
                SOURCES.of(rows.parts()),
                LocalDate.parse(row.text("opened_on")),
                row.text("purpose"),
                row.has("simulated") && row.flag("simulated"));
    }
}
