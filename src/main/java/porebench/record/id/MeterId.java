package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name by which the laboratory knows a pressure air meter; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record MeterId(String text) implements Name<MeterId> {
    public MeterId {
        text = Require.notBlank("MeterId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}
