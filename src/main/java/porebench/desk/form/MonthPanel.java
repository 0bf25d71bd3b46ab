package porebench.desk.form;

import java.awt.Color;
import java.awt.Graphics;
import java.awt.GridLayout;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import porebench.method.Texts;

/** A month as a small panel: its weeks one under the other, the day of today framed and the marked one filled. */
final class MonthPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JLabel title = new JLabel("", SwingConstants.CENTER);
    private final List<JLabel> weekDays = new ArrayList<>();
    private final List<DayLabel> days = new ArrayList<>();
    private final transient LocalDate today;

    /**
     * Makes the panel.
     *
     * @param taken hears a day that was clicked
     * @param turned hears by how many months to turn
     */
    MonthPanel(LocalDate today, Texts texts, Consumer<LocalDate> taken, IntConsumer turned) {
        super(new MigLayout("insets 8, wrap 3, gap 4", "[]2[grow,fill]2[]", "[]4[]"));
        this.today = today;
        setName("month");
        setFocusable(false);
        title.setName("month.title");
        title.putClientProperty("FlatLaf.styleClass", "h4");
        add(turn("month.before", texts.get("month.before"), "\u2039", () -> turned.accept(-1)));
        add(title);
        add(turn("month.after", texts.get("month.after"), "\u203a", () -> turned.accept(1)));
        JPanel grid = new JPanel(new GridLayout(MonthModel.WEEKS + 1, MonthModel.WEEK, 2, 2));
        grid.setOpaque(false);
        for (int i = 0; i < MonthModel.WEEK; i++) {
            JLabel label = new JLabel("", SwingConstants.CENTER);
            label.putClientProperty("FlatLaf.styleClass", "quiet");
            weekDays.add(label);
            grid.add(label);
        }
        for (int i = 0; i < MonthModel.WEEKS * MonthModel.WEEK; i++) {
            DayLabel label = new DayLabel(taken);
            days.add(label);
            grid.add(label);
        }
        add(grid, "span 3, growx");
        JLabel keys = new JLabel(texts.get("month.keys"));
        keys.putClientProperty("FlatLaf.styleClass", "quiet");
        add(keys, "span 3");
    }

    /** The keyboard stays in the field, so the buttons are for the mouse alone; the keys turn months as well. */
    private static JButton turn(String name, String words, String sign, Runnable turn) {
        JButton button = new JButton(sign);
        button.setName(name);
        button.setFocusable(false);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        button.getAccessibleContext().setAccessibleName(words);
        button.setToolTipText(words);
        button.addActionListener(event -> turn.run());
        return button;
    }

    void show(MonthModel month) {
        title.setText(month.title());
        List<String> names = month.weekDays();
        for (int i = 0; i < names.size(); i++) {
            weekDays.get(i).setText(names.get(i));
        }
        List<LocalDate> shown = month.days();
        for (int i = 0; i < shown.size(); i++) {
            LocalDate day = shown.get(i);
            days.get(i).show(day, day.equals(month.marked()), day.equals(today), month.isOfMonth(day));
        }
        getAccessibleContext().setAccessibleName(month.spoken());
    }

    /** One day of the month. */
    private static final class DayLabel extends JLabel {
        private static final long serialVersionUID = 1L;
        private static final int ARC = 6;

        private transient LocalDate day = LocalDate.EPOCH;
        private boolean isMarked;
        private boolean isToday;

        DayLabel(Consumer<LocalDate> taken) {
            super("", SwingConstants.CENTER);
            addMouseListener(new MouseAdapter() {
                @Override
                public void mouseReleased(MouseEvent event) {
                    taken.accept(day);
                }
            });
        }

        void show(LocalDate shown, boolean marked, boolean ofToday, boolean ofMonth) {
            day = shown;
            isMarked = marked;
            isToday = ofToday;
            setName("day." + Days.show(shown));
            setText(" " + shown.getDayOfMonth() + " ");
            setForeground(UIManager.getColor(
                    marked ? "List.selectionForeground" : ofMonth ? "Label.foreground" : "Porebench.quiet"));
            getAccessibleContext().setAccessibleName(Days.show(shown));
            repaint();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Color fill = UIManager.getColor("List.selectionBackground");
            graphics.setColor(fill);
            if (isMarked) {
                graphics.fillRoundRect(0, 0, getWidth(), getHeight(), ARC, ARC);
            } else if (isToday) {
                graphics.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, ARC, ARC);
            }
            super.paintComponent(graphics);
        }
    }
}
