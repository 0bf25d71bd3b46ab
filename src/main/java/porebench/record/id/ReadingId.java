package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name of a field reading; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record ReadingId(String text) implements Name<ReadingId> {
    public ReadingId {
        text = Require.notBlank("ReadingId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}
