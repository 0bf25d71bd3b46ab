package porebench.desk.mix;

import java.util.ArrayList;
import java.util.List;
import porebench.desk.form.ColumnModel;
import porebench.desk.form.TypedDraft;
import porebench.method.Texts;
import porebench.record.column.MixColumns;

/** What changed between two versions of a mix design, in a few words. */
final class MixChanges {
    private MixChanges() {}

    /** Returns the names of the fields and constituents that differ, in the order of the page. */
    static List<String> between(TypedDraft before, TypedDraft after, ColumnModel words, Texts texts) {
        List<String> changed = new ArrayList<>();
        MixFields.ALL.stream()
                .filter(column -> !words.said(column, before).equals(words.said(column, after)))
                .forEach(column -> changed.add(words.words(column)));
        constituents(before.rows(MixColumns.CONSTITUENTS), after.rows(MixColumns.CONSTITUENTS), texts, changed);
        return changed;
    }

    private static void constituents(
            List<TypedDraft> before, List<TypedDraft> after, Texts texts, List<String> changed) {
        after.stream().filter(row -> !before.contains(row)).forEach(row -> changed.add(row.text(MixColumns.NAME)));
        before.stream()
                .map(row -> row.text(MixColumns.NAME))
                .filter(name -> after.stream()
                        .noneMatch(other -> other.text(MixColumns.NAME).equals(name)))
                .forEach(name -> changed.add(texts.get("changed.gone", name)));
    }
}
