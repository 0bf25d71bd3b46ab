package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name by which the laboratory knows a determination; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record DeterminationId(String text) implements Name<DeterminationId> {
    public DeterminationId {
        text = Require.notBlank("DeterminationId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}
