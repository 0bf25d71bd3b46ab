package porebench.exchange;

import java.util.List;
import java.util.Optional;
import porebench.method.Limit;
import porebench.method.MeterType;
import porebench.record.Meter;
import porebench.record.id.MeterId;

/** {@code meters.csv}: one row a pressure air meter with its bowl. */
final class MeterFormat implements Format.RowByRow<Meter> {
    private static final Columns COLUMNS = Columns.of(
            "meter_id,meter_type,serial,bowl_volume,bowl_volume_unit,division_pct,scale_top_pct,in_service", "remarks");

    @Override
    public Class<Meter> type() {
        return Meter.class;
    }

    @Override
    public String fileName() {
        return "meters.csv";
    }

    @Override
    public Columns columns() {
        return COLUMNS;
    }

    @Override
    public List<String> key() {
        return List.of("meter_id");
    }

    @Override
    public Optional<Meter> read(Entry entry) {
        Optional<MeterId> id = entry.id("meter_id", MeterId::new);
        Optional<MeterType> type = entry.choice("meter_type", List.of(MeterType.values()), MeterType::name);
        var bowl = Bowls.read(entry);
        var division = entry.number("division_pct", Bounds.of(Limit.DIVISION));
        var top = entry.number("scale_top_pct", Bounds.of(Limit.SCALE_TOP));
        Optional<Boolean> inService = entry.yesNo("in_service");
        if (id.isEmpty()
                || type.isEmpty()
                || bowl.isEmpty()
                || division.isEmpty()
                || top.isEmpty()
                || inService.isEmpty()) {
            return Optional.empty();
        }
        Meter meter = new Meter(
                id.get(),
                type.get(),
                entry.text("serial"),
                bowl.get(),
                division.get(),
                top.get(),
                inService.get(),
                entry.text("remarks"));
        meter.checkScale().ifPresent(problem -> entry.error("scale_top_pct", problem));
        return Optional.of(meter);
    }

    @Override
    public List<String> row(Meter value) {
        return List.of(
                value.id().text(),
                value.type().name(),
                value.serial(),
                value.bowl().number().toString(),
                value.bowl().unit().symbol(),
                value.divisionPercent().toString(),
                value.scaleTopPercent().toString(),
                Entry.yesNoWord(value.inService()),
                value.remarks());
    }
}
