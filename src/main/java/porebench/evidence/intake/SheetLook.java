package porebench.evidence.intake;

import java.util.List;
import java.util.Map;

/**
 * A first look at a file before anybody says how it is written: what it seems to be, and its first rows as they would be read.
 *
 * @param seems how it seems to be written; as documented where nothing speaks against it
 * @param firstRows its heading and first rows by how the file would be read; a number that would be understood is written with a
 *     point
 */
public record SheetLook(SheetStyle seems, Map<SheetStyle, List<List<String>>> firstRows) {
    public SheetLook {
        firstRows = Map.copyOf(firstRows);
    }

    /** Returns whether the file seems to be written in another way than is documented. */
    public boolean isOtherwise() {
        return !seems.equals(SheetStyle.DOCUMENTED);
    }
}
