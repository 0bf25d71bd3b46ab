package porebench.record;

import porebench.quantity.Require;

/**
 * The laboratory whose book this is; a lab book has one.
 *
 * @param name as printed on cards and sheets
 * @param address one line, may be empty
 * @param training whether its book is for training: it takes simulated trials and no others
 */
public record Laboratory(String name, String address, boolean training) implements Kept {
    /** The one id of this kind. */
    public static final String ID = "laboratory";

    public Laboratory {
        Require.notBlank("name", name);
    }

    /** Makes a laboratory whose book holds real trials. */
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
