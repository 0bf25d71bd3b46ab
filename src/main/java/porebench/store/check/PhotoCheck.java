package porebench.store.check;

import java.util.HashMap;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import porebench.record.PhotoFile;
import porebench.record.SheetPhoto;
import porebench.store.rows.PhotoTable;

/** Holds the bytes of photos against what their records say of them; each is read once, one at a time. */
final class PhotoCheck {
    private final PhotoTable table;
    private final Map<PhotoFile, Boolean> looked = new HashMap<>();

    PhotoCheck(Handle handle) {
        this.table = new PhotoTable(handle);
    }

    /** Adds that the bytes of a photo are missing or others than were kept. */
    void look(long entryNo, SheetPhoto photo, Faults faults) {
        if (!looked.computeIfAbsent(photo.file(), this::isWhole)) {
            faults.ofEntry(entryNo, "book.photo-changed", entryNo, photo.id().text());
        }
    }

    private boolean isWhole(PhotoFile file) {
        try {
            return table.withBytes(file).isPresent();
        } catch (JdbiException damaged) {
            return false;
        }
    }

    /** Adds the bytes that belong to no photo. */
    void strays(Faults faults) {
        try {
            table.strays().forEach(sha256 -> faults.at("table " + PhotoTable.TABLE, "book.photo-foreign", sha256));
        } catch (JdbiException damaged) {
            faults.at("table " + PhotoTable.TABLE, "book.damaged-table", PhotoTable.TABLE);
        }
    }
}
