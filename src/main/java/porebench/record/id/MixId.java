package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name by which the laboratory knows a mix design; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record MixId(String text) implements Name<MixId> {
    public MixId {
        text = Require.notBlank("MixId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}
