package porebench.desk.register;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.id.MixId;

/** The mixes that use the record on view; each opens its mix. */
final class MixLinks {
    /** More would not be looked through here; the list of mixes finds them. */
    private static final int MOST = 24;

    private static final String COLUMNS = "insets 0, fillx, gap 6, wrap 2";

    private final JPanel panel = new JPanel(new MigLayout(COLUMNS, "[grow 50,fill,0::][grow 50,fill,0::]"));
    private final Consumer<MixId> openMix;
    private final Texts texts;
    private List<MixId> shown = List.of();

    MixLinks(String name, Texts texts, Consumer<MixId> openMix) {
        this.texts = texts;
        this.openMix = openMix;
        panel.setName(name);
        panel.setOpaque(false);
    }

    JComponent component() {
        return panel;
    }

    /** Shows other mixes; those on view keep their buttons, and the keyboard with them. */
    void show(List<MixId> mixes) {
        panel.setVisible(!mixes.isEmpty());
        if (mixes.equals(shown)) {
            return;
        }
        shown = List.copyOf(mixes);
        panel.removeAll();
        for (MixId mix : mixes.subList(0, Math.min(MOST, mixes.size()))) {
            JButton link = Commands.button(
                    "usedBy." + mix.text(),
                    Commands.of(texts.get("record.open-mix", mix.text()), () -> openMix.accept(mix)));
            link.setToolTipText(link.getText());
            panel.add(link, "wmin 0");
        }
        if (mixes.size() > MOST) {
            panel.add(
                    new WrappedText(
                            panel.getName() + ".more", "quiet", texts.get("record.more-mixes", mixes.size() - MOST)),
                    "spanx 2, wmin 0");
        }
        panel.revalidate();
    }
}
