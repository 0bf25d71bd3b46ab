package porebench.desk.frame.rail;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Bowls;
import porebench.desk.DeskModel;
import porebench.desk.StateMark;
import porebench.desk.form.Numbers;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.method.Texts;

/** One mix in the list: its state as a shape and in words, its name, and the factor in force. */
final class MixCell extends JPanel implements ListCellRenderer<RegisterRow> {
    private static final long serialVersionUID = 1L;
    private static final int ARC = 8;

    private final JLabel mark = new JLabel();
    private final JLabel name = new JLabel();
    private final JLabel state = new JLabel();
    private final JLabel factor = new JLabel();
    private final transient Texts texts;
    private final transient Numbers numbers;
    private final transient Bowls bowls;
    private boolean chosen;
    private boolean focused;

    MixCell(Texts texts, DeskModel desk) {
        super(new MigLayout("insets 7 10 7 10, fillx, novisualpadding", "[]8[grow,fill,0::]8[]", "[]1[]"));
        this.texts = texts;
        this.numbers = desk.tools().numbers();
        this.bowls = new Bowls(desk);
        setOpaque(false);
        add(mark, "spany 2");
        add(name, "wmin 0");
        add(factor, "spany 2, wrap");
        add(state, "wmin 0");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends RegisterRow> list, RegisterRow row, int index, boolean isSelected, boolean hasFocus) {
        chosen = isSelected;
        focused = hasFocus;
        name.setFont(UIManager.getFont("semibold.font"));
        factor.setFont(UIManager.getFont("h3.font"));
        mark.setIcon(new StateMark(row.state(), 14));
        name.setText(texts.get("rail.mix", row.mixId().text(), row.title()));
        String stands = stateWords(texts, row.state());
        state.setText(bowls.words(row.mixId())
                .map(bench -> texts.get("rail.state-and-bench", bench, stands))
                .orElse(stands));
        state.setForeground(StateMark.colour(row.state()));
        String inForce = row.factorPercent()
                .map(percent -> texts.get("percent", numbers.show(percent)))
                .orElse(texts.get("no-factor"));
        factor.setText(inForce);
        getAccessibleContext()
                .setAccessibleName(texts.get("rail.spoken", name.getText(), state.getText(), factor.getText()));
        setToolTipText(name.getText());
        return this;
    }

    static String stateWords(Texts texts, FactorState state) {
        return texts.get("state." + state.symbol().replace(' ', '-'));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (!chosen) {
            return;
        }
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        int arc = UIScale.scale(ARC) * 2;
        int gap = UIScale.scale(1);
        pen.setColor(UIManager.getColor("Porebench.step.selected"));
        pen.fillRoundRect(gap, gap, getWidth() - 2 * gap, getHeight() - 2 * gap, arc, arc);
        if (focused) {
            pen.setColor(UIManager.getColor("Component.focusedBorderColor"));
            pen.drawRoundRect(gap, gap, getWidth() - 2 * gap - 1, getHeight() - 2 * gap - 1, arc, arc);
        }
        pen.dispose();
    }
}
