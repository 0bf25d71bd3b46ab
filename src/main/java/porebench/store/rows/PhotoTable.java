package porebench.store.rows;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.Update;
import porebench.record.PhotoFile;

/**
 * The table {@code photo_content}: the bytes of photos by their SHA-256, each once however many trials stand on the sheet. Rows of
 * records are without them, so that no other question reads them.
 */
public final class PhotoTable {
    public static final String TABLE = "photo_content";

    private final Handle handle;

    public PhotoTable(Handle handle) {
        this.handle = handle;
    }

    /** Keeps the bytes of a photo, unless they are there. */
    public void keep(PhotoFile file) {
        if (!file.hasBytes() || holds(file.sha256())) {
            return;
        }
        try (Update insertion =
                handle.createUpdate("INSERT INTO photo_content (sha256, content) VALUES (:sha256, :content)")) {
            insertion
                    .bind("sha256", file.sha256())
                    .bind("content", file.bytes())
                    .execute();
        }
    }

    /** Returns whether bytes of a SHA-256 are there. */
    public boolean holds(String sha256) {
        try (Query query = handle.createQuery("SELECT count(*) FROM photo_content WHERE sha256 = :sha256")) {
            return query.bind("sha256", sha256).mapTo(Integer.class).one() > 0;
        }
    }

    /** Returns the file with its bytes; empty when they are not there, or are others than is stated. */
    public Optional<PhotoFile> withBytes(PhotoFile stated) {
        try (Query query = handle.createQuery("SELECT content FROM photo_content WHERE sha256 = :sha256")) {
            return query.bind("sha256", stated.sha256())
                    .mapTo(byte[].class)
                    .findFirst()
                    .flatMap(bytes -> PhotoFile.of(bytes).value())
                    .filter(stated::equals);
        }
    }

    /** Returns the SHA-256 of all bytes that no photo of the history names. */
    public List<String> strays() {
        try (Query query = handle.createQuery(
                "SELECT sha256 FROM photo_content WHERE sha256 NOT IN (SELECT sha256 FROM sheet_photo) ORDER BY sha256")) {
            return query.mapTo(String.class).list();
        }
    }
}
