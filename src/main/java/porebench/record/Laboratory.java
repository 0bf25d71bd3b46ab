package porebench.record;

import porebench.quantity.Require;

/**
 * The laboratory whose book this is; a lab book has one.
 *
 * @param name as printed on cards and sheets
 * @param address one line, may be empty
 */
public record Laboratory(String name, String address, boolean training) implements Kept {
    /** The one id of this kind. */
    public static final String ID = "laboratory";

    public Laboratory {
        Require.notBlank("name", name);
    }

    public Laboratory(String name, String address) {
        this(name, address, false);
    }

    @Override
    public RecordKind kind() {
        return RecordKind.LABORATORY;
    }

    @Override
    public String recordId() {
        return ID;
    }
}
