package porebench.store.chain;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import porebench.store.rows.StoredRecord;
import porebench.store.rows.StoredRow;

/**
 * The one text that says what is stored, and its SHA-256.
 *
 * <p>A field is its length in characters, a colon and itself, so that no content can be taken for another. A row is the
 * fields table, number of columns that are not null, then name and content of each, by name. A record is the field of its
 * row, then the fields of its parts' rows, sorted. A column that a later step adds is null in older rows and changes
 * nothing.
 */
public final class Canonical {
    private Canonical() {}

    /** Returns the text of a record as stored. */
    public static String text(StoredRecord stored) {
        StringBuilder text = new StringBuilder();
        field(text, text(stored.row()));
        stored.parts().stream().map(Canonical::text).sorted().forEach(part -> field(text, part));
        return text.toString();
    }

    private static String text(StoredRow row) {
        StringBuilder text = new StringBuilder();
        field(text, row.table());
        field(text, Integer.toString(row.size()));
        row.each((column, content) -> {
            field(text, column);
            field(text, content.toString());
        });
        return text.toString();
    }

    /** Returns the text of some fields. */
    public static String text(String... fields) {
        StringBuilder text = new StringBuilder();
        for (String field : fields) {
            field(text, field);
        }
        return text.toString();
    }

    private static void field(StringBuilder text, String content) {
        text.append(content.length()).append(':').append(content);
    }

    /** Returns the SHA-256 of a text in UTF-8, in hexadecimal digits. */
    public static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
