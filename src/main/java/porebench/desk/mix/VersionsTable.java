package porebench.desk.mix;

import java.time.ZoneId;
import java.util.List;
import javax.swing.JScrollPane;
import javax.swing.table.DefaultTableModel;
import porebench.desk.form.Days;
import porebench.desk.form.WideTable;
import porebench.method.Texts;
import porebench.record.MixDesign;
import porebench.record.book.Version;

/** All versions of a mix design: when, who, why, and what changed. */
final class VersionsTable {
    private static final int[] WIDTHS = {64, 130, 130, 310, 310};

    private final MixModel model;
    private final Texts texts;
    private final ZoneId zone;
    private final DefaultTableModel rows = new DefaultTableModel() {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean isCellEditable(int row, int column) {
            return false;
        }
    };
    private final JScrollPane scrolled;
    private List<Version<MixDesign>> shown = List.of();

    VersionsTable(MixModel model, ZoneId zone) {
        this.model = model;
        this.texts = model.texts();
        this.zone = zone;
        for (String key : List.of("version.number", "version.at", "version.who", "version.why", "version.changed")) {
            rows.addColumn(texts.get(key));
        }
        WideTable table = new WideTable("versions", rows);
        table.getAccessibleContext().setAccessibleName(texts.get("section.versions"));
        for (int column = 0; column < WIDTHS.length; column++) {
            table.setColumn(column, WIDTHS[column], false);
        }
        scrolled = table.scrolled();
    }

    JScrollPane component() {
        return scrolled;
    }

    /** Returns a moment as the page says it. */
    String say(Version<MixDesign> version) {
        return Days.show(version.stamp().at(), zone);
    }

    void refresh() {
        List<Version<MixDesign>> versions = model.versions();
        if (versions.equals(shown)) {
            return;
        }
        shown = versions;
        rows.setRowCount(0);
        for (int index = 0; index < versions.size(); index++) {
            Version<MixDesign> version = versions.get(index);
            String changed = index + 1 < versions.size()
                    ? String.join(", ", model.changes(versions.get(index + 1).value(), version.value()))
                    : texts.get("version.first");
            rows.addRow(new Object[] {
                Integer.toString(version.number()),
                say(version),
                version.stamp().who(),
                version.stamp().why(),
                changed
            });
        }
        scrolled.revalidate();
    }
}
