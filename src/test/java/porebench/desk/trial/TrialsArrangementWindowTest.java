package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.BenchBook;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;
import porebench.desk.frame.Theme;

/** What comes first on the Trials page, in a window as wide as one of 1280 pixels leaves it beside the mixes. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class TrialsArrangementWindowTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final int WIDTH = 970;

    private final BenchBook bench = new BenchBook();
    private JFrame frame;

    @BeforeEach
    void open() throws Exception {
        bench.keep(BenchBook.determination(1, DAY));
        for (int number = 1; number <= 12; number++) {
            bench.keep(BenchBook.trial("K7-T" + number, 1, DAY, "6.4"));
        }
        bench.select();
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            TrialsPage page = new TrialsPage(bench.desk);
            frame = new JFrame();
            frame.setContentPane(page.component());
            frame.setSize(WIDTH, 600);
            frame.setVisible(true);
        });
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> frame.dispose());
    }

    @Test
    void theTableIsAsHighAsItsRows() {
        JScrollPane around = (JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, named("trials"));
        assertThat(((JTable) named("trials")).getRowCount()).isEqualTo(12);
        assertThat(around.getVerticalScrollBar().isVisible()).isFalse();
    }

    @Test
    void theReadingStandsWhollyInTheTable() {
        JTable table = (JTable) named("trials");
        int column = table.getColumnModel().getColumnIndex("Reading (%)");
        Rectangle cell = table.getCellRect(0, column, true);
        assertThat(cell.x + cell.width)
                .isLessThanOrEqualTo(table.getParent().getWidth())
                .isPositive();
    }

    @Test
    void whileTrialsCanBeAddedTheEntryComesFirstAndItsFigureIsLargest() throws Exception {
        assertThat(named("gauge").isShowing()).isTrue();
        assertThat(top("gauge")).isLessThan(top("trials"));
        assertThat(top("liveFactor")).isLessThan(frame.getRootPane().getHeight());
        assertThat(((JLabel) named("liveFactor")).getFont().getSize())
                .isGreaterThan(new JTextField().getFont().getSize() * 2);
    }

    @Test
    void whereNoTrialCanBeAddedTheTrialsComeFirstUnlessOneIsTypedAlready() throws Exception {
        EventThread.run(() -> ((JTextField) named("gauge")).setText("6.4"));
        bench.keep(BenchBook.determination(2, DAY));
        EventThread.run(() -> bench.desk.refresh());
        Keys.bringTo(() -> named("determination"));
        Keys keys = new Keys();
        for (int key : new int[] {KeyEvent.VK_DOWN, KeyEvent.VK_UP, KeyEvent.VK_UP}) {
            if (!EventThread.comesWithin(1, () -> named("closed").isShowing())) {
                keys.strike(key);
            }
        }
        assertThat(EventThread.comes(() -> named("closed").isShowing())).isTrue();
        assertThat(named("gauge").isShowing()).isTrue();
        EventThread.run(() -> ((JTextField) named("gauge")).setText(""));
        EventThread.run(() -> ((AbstractButton) named("clear")).doClick());
        assertThat(named("gauge").isShowing()).isFalse();
        assertThat(top("trials")).isLessThan(frame.getRootPane().getHeight() / 2);
    }

    private int top(String name) {
        return SwingUtilities.convertPoint(named(name), 0, 0, frame.getRootPane()).y;
    }

    private Component named(String name) {
        return find(frame.getContentPane(), name).orElseThrow();
    }

    private static Optional<Component> find(Container around, String name) {
        for (Component child : around.getComponents()) {
            Optional<Component> found = name.equals(child.getName())
                    ? Optional.of(child)
                    : child instanceof Container inner ? find(inner, name) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
