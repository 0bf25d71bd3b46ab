package porebench.store;

import porebench.method.MeterType;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.RecordKind;
import porebench.record.id.MeterId;

/** The table {@code meter}. */
final class MeterTable implements RecordTable<Meter> {
    @Override
    public RecordKind kind() {
        return RecordKind.METER;
    }

    @Override
    public String name() {
        return "meter";
    }

    @Override
    public StoredRecord rows(Meter meter) {
        return StoredRecord.of(new StoredRow(name())
                .cell("meter_id", meter.id().text())
                .cell("meter_type", meter.type().name())
                .cell("serial", meter.serial())
                .typed("bowl_volume", meter.bowl())
                .number("division_pct", meter.divisionPercent())
                .number("scale_top_pct", meter.scaleTopPercent())
                .flag("in_service", meter.inService())
                .cell("remarks", meter.remarks()));
    }

    @Override
    public Meter value(StoredRecord rows) {
        StoredRow row = rows.row();
        return new Meter(
                new MeterId(row.text("meter_id")),
                row.word("meter_type", MeterType.values(), MeterType::name),
                row.text("serial"),
                row.typed("bowl_volume", VolumeUnit.values()),
                row.number("division_pct"),
                row.number("scale_top_pct"),
                row.flag("in_service"),
                row.text("remarks"));
    }
}
