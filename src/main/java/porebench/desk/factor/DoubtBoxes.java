package porebench.desk.factor;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.WrappedText;
import porebench.evidence.issue.IssueDoubt;
import porebench.method.Problem;

/** The doubts about a factor to be issued, one box each: whoever takes a doubt on ticks it. */
final class DoubtBoxes {
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 2", "[]6[grow,fill]", "[]2[]"));
    private final Function<Problem, String> words;
    private final BiConsumer<IssueDoubt.Key, Boolean> onTick;
    private List<IssueDoubt> shown = List.of();

    DoubtBoxes(Function<Problem, String> words, BiConsumer<IssueDoubt.Key, Boolean> onTick) {
        this.words = words;
        this.onTick = onTick;
        panel.setName("factor.doubt-boxes");
        panel.setOpaque(false);
    }

    JPanel panel() {
        return panel;
    }

    /** Shows some doubts; boxes that are there already stay, and with them the focus. */
    void show(List<IssueDoubt> doubts, IssueDraft draft) {
        if (!doubts.equals(shown)) {
            shown = List.copyOf(doubts);
            panel.removeAll();
            for (int index = 0; index < shown.size(); index++) {
                add(shown.get(index), index);
            }
            panel.revalidate();
            panel.repaint();
        }
        for (int index = 0; index < shown.size(); index++) {
            if (panel.getComponent(2 * index) instanceof JCheckBox box) {
                box.setSelected(draft.taken().contains(shown.get(index).key()));
            }
        }
        panel.setVisible(!shown.isEmpty());
    }

    private void add(IssueDoubt doubt, int index) {
        String text = words.apply(doubt.asSaid());
        JCheckBox box = new JCheckBox();
        box.setName("factor.doubt." + index);
        box.getAccessibleContext().setAccessibleName(text);
        box.addActionListener(event -> onTick.accept(doubt.key(), box.isSelected()));
        WrappedText said = new WrappedText("factor.doubt-words." + index, "");
        said.setText(text);
        said.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                box.doClick(0);
            }
        });
        panel.add(box, "top");
        panel.add(said, "wmin 0");
    }
}
