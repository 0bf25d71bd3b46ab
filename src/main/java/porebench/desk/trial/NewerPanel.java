package porebench.desk.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.TypedDraft;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.Trial;
import porebench.record.book.Version;

/** Shows what somebody else kept of a trial while it is corrected here: theirs and yours, before a reason is typed. */
final class NewerPanel {
    private final BenchModel entry;
    private final Texts texts;
    private final WrappedText title = new WrappedText("newer.title", "fieldWarning");
    private final WrappedText theirs = new WrappedText("newer.theirs", "");
    private final WrappedText yours = new WrappedText("newer.yours", "");
    private final WrappedText both = new WrappedText("newer.both", "quiet");
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[grow 50,fill]16[grow 50,fill]", "[][top][][]"));

    NewerPanel(BenchModel entry, Texts texts) {
        this.entry = entry;
        this.texts = texts;
        panel.setOpaque(false);
        panel.add(title, "span 2, wmin 0, wrap");
        panel.add(theirs, "w 50%, wmin 0");
        panel.add(yours, "w 50%, wmin 0, wrap");
        panel.add(both, "span 2, wmin 0, wrap");
        panel.add(
                Commands.button("newer.goOn", Commands.of(texts.get("newer.go-on"), entry::goOnFromNewer)), "growx 0");
    }

    JComponent component() {
        return panel;
    }

    void show() {
        Optional<Version<Trial>> newer = entry.newer();
        panel.setVisible(newer.isPresent());
        newer.ifPresent(this::show);
    }

    private void show(Version<Trial> newest) {
        TypedDraft before = entry.history().saved();
        TypedDraft other = entry.drafts().of(newest.value());
        title.say(texts.get(
                "newer.title",
                newest.stamp().who(),
                Integer.toString(newest.number()),
                newest.stamp().why()));
        theirs.say(texts.get("newer.theirs", changes(before, other)));
        yours.say(texts.get("newer.yours", changes(before, entry.draft())));
        boolean isSame = BenchFields.ALL.stream()
                .anyMatch(column -> isChanged(before.text(column), other.text(column))
                        && isChanged(before.text(column), entry.draft().text(column))
                        && isChanged(other.text(column), entry.draft().text(column)));
        both.say(isSame ? texts.get("newer.both") : "");
    }

    private static boolean isChanged(String one, String another) {
        return !one.equals(another);
    }

    private String changes(TypedDraft before, TypedDraft after) {
        List<String> said = new ArrayList<>(entry.changes(BenchFields.ALL, before, after));
        return said.isEmpty() ? texts.get("newer.none") : String.join("; ", said);
    }
}
