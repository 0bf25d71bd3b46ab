package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name by which the laboratory knows a piece of equipment; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record EquipmentId(String text) implements Name<EquipmentId> {
    public EquipmentId {
        text = Require.notBlank("EquipmentId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}
