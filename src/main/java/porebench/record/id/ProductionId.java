package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name of a spell of production; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record ProductionId(String text) implements Name<ProductionId> {
    public ProductionId {
        text = Require.notBlank("ProductionId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}
