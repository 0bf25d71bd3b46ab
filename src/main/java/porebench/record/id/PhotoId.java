package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name of a photo of a signed sheet, which follows from its trial; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record PhotoId(String text) implements Name<PhotoId> {
    public PhotoId {
        text = Require.notBlank("PhotoId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}
