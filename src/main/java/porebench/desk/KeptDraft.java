package porebench.desk;

import java.util.Optional;
import porebench.desk.form.DraftText;
import porebench.desk.form.TypedDraft;

/**
 * A draft as it is kept in {@link Unsaved}: what was typed, and of a correction which version it corrects.
 *
 * <p>As text it is that of the draft, led by a line {@code @}, the number of the version, a tab and the name of the record where
 * it is a correction.
 *
 * @param recordId the name of the record that is corrected; empty for a new one
 * @param version the number of the version that is corrected; 0 for a new record
 */
public record KeptDraft(String recordId, int version, TypedDraft draft) {
    private static final String LEAD = "@";

    /** Returns the draft of a new record. */
    public static KeptDraft ofNew(TypedDraft draft) {
        return new KeptDraft("", 0, draft);
    }

    /** Returns what was typed otherwise of the same record. */
    KeptDraft with(TypedDraft other) {
        return new KeptDraft(recordId, version, other);
    }

    boolean isNew() {
        return version == 0;
    }

    /** Returns whether it corrects a version of a record; 0 and no name stand for a new one. */
    boolean isOf(String id, int number) {
        return recordId.equals(id) && version == number;
    }

    String text() {
        String typed = DraftText.of(draft);
        return isNew() ? typed : LEAD + version + '\t' + recordId + '\n' + typed;
    }

    /** Returns the draft that a text holds; empty where it holds none. */
    static Optional<KeptDraft> parse(String text) {
        if (!text.startsWith(LEAD)) {
            return DraftText.parse(text).map(KeptDraft::ofNew);
        }
        int tab = text.indexOf('\t');
        int end = text.indexOf('\n');
        if (tab < 0 || end < tab || !text.substring(LEAD.length(), tab).matches("[1-9][0-9]{0,8}")) {
            return Optional.empty();
        }
        int version = Integer.parseInt(text.substring(LEAD.length(), tab));
        return DraftText.parse(text.substring(end + 1))
                .map(draft -> new KeptDraft(text.substring(tab + 1, end), version, draft));
    }
}
