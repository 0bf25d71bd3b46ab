package porebench.exchange;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.sample.Constituent;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;

/** The cells of a mix design's row that state one constituent. */
final class ConstituentCells {
    static final String COLUMNS = "constituent,role,source_id,mass,mass_unit,mass_state,absorption_pct,moisture_pct,"
            + "relative_density,retained_37_5mm_pct";

    private ConstituentCells() {}

    static Optional<Constituent> read(Entry entry) {
        Optional<String> name = entry.word("constituent");
        name.ifPresent(entry::isAbout);
        Optional<Role> role = entry.choice("role", Arrays.asList(Role.values()), Role::symbol);
        Optional<Typed<Mass>> mass =
                entry.quantity("mass", Bounds.NOT_NEGATIVE, "mass_unit", List.of(MassUnit.values()));
        Optional<MoistureState> state = state(entry, role);
        Optional<BigDecimal> absorption = entry.optionalNumber("absorption_pct", Bounds.PERCENT);
        Optional<BigDecimal> moisture = entry.optionalNumber("moisture_pct", Bounds.PERCENT);
        Optional<BigDecimal> density = entry.optionalNumber("relative_density", Bounds.of("0", "100"));
        Optional<BigDecimal> retained = entry.optionalNumber("retained_37_5mm_pct", Bounds.of("0", "100"));
        if (name.isEmpty() || role.isEmpty() || mass.isEmpty() || state.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Constituent(
                entry.text("constituent"),
                role.get(),
                entry.optionalWord("source_id"),
                mass.get(),
                state.get(),
                absorption,
                moisture,
                density,
                retained.orElse(BigDecimal.ZERO)));
    }

    /** Only aggregate has a moisture state that matters; of anything else it may be left out. */
    private static Optional<MoistureState> state(Entry entry, Optional<Role> role) {
        boolean mayBeEmpty = role.isEmpty() || !role.get().isAggregate();
        return mayBeEmpty && entry.optionalWord("mass_state").isEmpty()
                ? Optional.of(MoistureState.SSD)
                : entry.choice("mass_state", Arrays.asList(MoistureState.values()), MoistureState::symbol);
    }

    static List<String> write(Constituent value) {
        return List.of(
                value.name(),
                value.role().symbol(),
                Format.cell(value.sourceId()),
                value.mass().number().toString(),
                value.mass().unit().symbol(),
                value.state().symbol(),
                Format.cell(value.absorptionPercent()),
                Format.cell(value.moisturePercent()),
                Format.cell(value.relativeDensity()),
                value.retainedPercent().toString());
    }
}
