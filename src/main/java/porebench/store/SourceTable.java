package porebench.store;

import porebench.method.Role;
import porebench.record.RecordKind;
import porebench.record.Source;
import porebench.record.id.SourceId;

/** The table {@code source}. */
final class SourceTable implements RecordTable<Source> {
    @Override
    public RecordKind kind() {
        return RecordKind.SOURCE;
    }

    @Override
    public String name() {
        return "source";
    }

    @Override
    public StoredRecord rows(Source source) {
        return StoredRecord.of(new StoredRow(name())
                .cell("source_id", source.id().text())
                .cell("name", source.name())
                .cell("role", source.role().symbol())
                .cell("place", source.place())
                .cell("ledge", source.ledge())
                .number("relative_density", source.relativeDensity())
                .number("absorption_pct", source.absorptionPercent())
                .cell("remarks", source.remarks()));
    }

    @Override
    public Source value(StoredRecord rows) {
        StoredRow row = rows.row();
        return new Source(
                new SourceId(row.text("source_id")),
                row.text("name"),
                row.word("role", Role.values(), Role::symbol),
                row.text("place"),
                row.text("ledge"),
                row.numberIfAny("relative_density"),
                row.numberIfAny("absorption_pct"),
                row.text("remarks"));
    }
}
