package porebench.desk.mix;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.sample.Constituent;
import porebench.quantity.MassUnit;

/**
 * One constituent as it stands on the page, letter by letter as typed.
 *
 * @param texts what is typed in its cells; a cell without any is left out
 * @param role what it does in the concrete
 * @param massUnit the unit its mass is typed in
 * @param state the moisture state of its mass
 */
record MixRow(Map<MixColumn, String> texts, Role role, MassUnit massUnit, MoistureState state) {
    MixRow {
        texts = Map.copyOf(texts);
    }

    /** Returns a constituent with a name and nothing else. */
    static MixRow named(String name, Role role, MassUnit massUnit) {
        return new MixRow(Map.of(), role, massUnit, MoistureState.SSD).with(MixColumn.NAME, name);
    }

    /** Returns a saved constituent as it was typed. */
    static MixRow of(Constituent saved, Numbers numbers) {
        return new MixRow(
                        Map.of(),
                        saved.role(),
                        saved.mass().unit() instanceof MassUnit unit ? unit : MassUnit.KILOGRAM,
                        saved.state())
                .with(MixColumn.NAME, saved.name())
                .with(MixColumn.SOURCE, saved.sourceId().orElse(""))
                .with(MixColumn.MASS, numbers.show(saved.mass().number()))
                .with(MixColumn.ABSORPTION, shown(saved.absorptionPercent(), numbers))
                .with(MixColumn.MOISTURE, shown(saved.moisturePercent(), numbers))
                .with(MixColumn.RELATIVE_DENSITY, shown(saved.relativeDensity(), numbers))
                .with(
                        MixColumn.RETAINED,
                        saved.retainedPercent().equals(BigDecimal.ZERO) ? "" : numbers.show(saved.retainedPercent()));
    }

    private static String shown(Optional<BigDecimal> typed, Numbers numbers) {
        return typed.map(numbers::show).orElse("");
    }

    /** Returns what is typed in a cell, empty when nothing is. */
    String text(MixColumn column) {
        return texts.getOrDefault(column, "");
    }

    /** Returns this row with other text in a cell. */
    MixRow with(MixColumn column, String text) {
        Map<MixColumn, String> changed = new EnumMap<>(MixColumn.class);
        changed.putAll(texts);
        if (text.isEmpty()) {
            changed.remove(column);
        } else {
            changed.put(column, text);
        }
        return new MixRow(changed, role, massUnit, state);
    }

    /** Returns this row in another role. */
    MixRow with(Role other) {
        return new MixRow(texts, other, massUnit, state);
    }

    /** Returns this row, its mass being in another unit; the digits stay. */
    MixRow with(MassUnit other) {
        return new MixRow(texts, role, other, state);
    }

    /** Returns this row, its mass being in another moisture state. */
    MixRow with(MoistureState other) {
        return new MixRow(texts, role, massUnit, other);
    }

    /** Returns whether a mass is typed: until then the person is not yet told what else the row lacks. */
    boolean hasMass() {
        return !text(MixColumn.MASS).isBlank();
    }
}
