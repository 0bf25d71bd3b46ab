package porebench.desk.register;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Days;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.Kept;
import porebench.record.book.Stamp;
import porebench.record.book.Version;

/** All versions of the record on view, the newest first: who, when, why, and what changed. */
final class VersionsPanel<T extends Kept> {
    private static final String STYLE = "FlatLaf.styleClass";

    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill,0::]"));
    private final RecordModel<T> model;
    private final Texts texts;
    private List<Version<T>> shown = new ArrayList<>();

    VersionsPanel(RecordModel<T> model, String what) {
        this.model = model;
        this.texts = model.texts();
        panel.setName(what + ".versions");
        panel.setOpaque(false);
    }

    JComponent component() {
        return panel;
    }

    void refresh() {
        List<Version<T>> versions = model.versions();
        if (versions.equals(shown)) {
            return;
        }
        shown = versions;
        panel.removeAll();
        if (!versions.isEmpty()) {
            JLabel title = new JLabel(texts.get("version.title"));
            title.putClientProperty(STYLE, "h2");
            panel.add(title, "gapbottom 6");
        }
        for (int index = 0; index < versions.size(); index++) {
            String changed = index + 1 < versions.size()
                    ? String.join(
                            "\n",
                            model.changes(
                                    versions.get(index + 1).value(),
                                    versions.get(index).value()))
                    : texts.get("version.first");
            add(versions.get(index), changed);
        }
        panel.revalidate();
        panel.repaint();
    }

    private void add(Version<T> version, String changed) {
        Stamp stamp = version.stamp();
        String name = panel.getName() + "." + version.number();
        WrappedText who = new WrappedText(name + ".who", "quiet");
        who.setText(texts.get(
                "version.stamp",
                Integer.toString(version.number()),
                Days.show(stamp.at(), model.desk().tools().zone()),
                stamp.who()));
        WrappedText why = new WrappedText(name + ".why", "");
        why.setText(changed.isBlank() ? stamp.why() : texts.get("version.why", stamp.why(), changed));
        panel.add(who, "wmin 0");
        panel.add(why, "wmin 0, gapbottom 10");
    }
}
