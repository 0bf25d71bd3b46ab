package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name by which the laboratory knows a source of aggregate; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record SourceId(String text) implements Name<SourceId> {
    public SourceId {
        text = Require.notBlank("SourceId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}
