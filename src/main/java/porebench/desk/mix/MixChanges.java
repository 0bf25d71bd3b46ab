package porebench.desk.mix;

import java.util.ArrayList;
import java.util.List;
import porebench.method.Texts;

/** What changed between two versions of a mix design, in a few words. */
final class MixChanges {
    private MixChanges() {}

    /** Returns the names of the fields and constituents that differ, in the order of the page. */
    static List<String> between(MixDraft before, MixDraft after, Texts texts) {
        List<String> changed = new ArrayList<>();
        for (MixField field : MixField.values()) {
            if (!before.text(field).equals(after.text(field))) {
                changed.add(texts.get(field.nameKey()));
            }
        }
        if (before.volumeFrom() != after.volumeFrom()) {
            changed.add(texts.get("name.volumeFrom"));
        }
        if (!before.profileId().equals(after.profileId())) {
            changed.add(texts.get("name.profile"));
        }
        if (before.wetSieved() != after.wetSieved()) {
            changed.add(texts.get("name.wetSieved"));
        }
        constituents(before, after, texts, changed);
        return changed;
    }

    private static void constituents(MixDraft before, MixDraft after, Texts texts, List<String> changed) {
        for (MixRow row : after.rows()) {
            if (!before.rows().contains(row)) {
                changed.add(row.text(MixColumn.NAME));
            }
        }
        for (MixRow row : before.rows()) {
            boolean isThere = after.rows().stream()
                    .anyMatch(other -> other.text(MixColumn.NAME).equals(row.text(MixColumn.NAME)));
            if (!isThere) {
                changed.add(texts.get("changed.gone", row.text(MixColumn.NAME)));
            }
        }
    }
}
