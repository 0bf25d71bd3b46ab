package porebench.exchange;

import java.util.List;
import java.util.Optional;
import porebench.method.Limit;
import porebench.method.Role;
import porebench.record.Source;
import porebench.record.id.SourceId;

/** {@code sources.csv}: one row a source of aggregate. */
final class SourceFormat implements Format.RowByRow<Source> {
    private static final Columns COLUMNS =
            Columns.of("source_id,name,role,place,ledge,relative_density,absorption_pct", "remarks");

    private static final List<Role> ROLES = List.of(Role.FINE, Role.COARSE);

    @Override
    public Class<Source> type() {
        return Source.class;
    }

    @Override
    public String fileName() {
        return "sources.csv";
    }

    @Override
    public Columns columns() {
        return COLUMNS;
    }

    @Override
    public List<String> key() {
        return List.of("source_id");
    }

    @Override
    public Optional<Source> read(Entry entry) {
        Optional<SourceId> id = entry.id("source_id", SourceId::new);
        Optional<Role> role = entry.choice("role", ROLES, Role::symbol);
        var density = entry.optionalNumber("relative_density", Bounds.of(Limit.RELATIVE_DENSITY));
        var absorption = entry.optionalNumber("absorption_pct", Bounds.of(Limit.ABSORPTION));
        if (id.isEmpty() || role.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Source(
                id.get(),
                entry.text("name"),
                role.get(),
                entry.text("place"),
                entry.text("ledge"),
                density,
                absorption,
                entry.text("remarks")));
    }

    @Override
    public List<String> row(Source value) {
        return List.of(
                value.id().text(),
                value.name(),
                value.role().symbol(),
                value.place(),
                value.ledge(),
                Format.cell(value.relativeDensity()),
                Format.cell(value.absorptionPercent()),
                value.remarks());
    }
}
