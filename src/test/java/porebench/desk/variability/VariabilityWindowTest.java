package porebench.desk.variability;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.BenchBook;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;
import porebench.desk.frame.Theme;

/** What comes first on the Variability page, in a window no larger than the smallest screen leaves it. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class VariabilityWindowTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();
    private JFrame frame;
    private Keys keys;

    @BeforeEach
    void open() throws Exception {
        keys = new Keys();
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(
                BenchBook.trial("T1", 1, DAY, "6.4"),
                BenchBook.trial("T2", 1, DAY.plusDays(1), "6.5"),
                BenchBook.trial("T3", 1, DAY.plusDays(2), "6.4"));
        bench.select();
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            VariabilityPage page = new VariabilityPage(bench.desk, trial -> {});
            frame = new JFrame();
            frame.setContentPane(page.component());
            frame.setSize(720, 510);
            frame.setVisible(true);
        });
        EventThread.settle();
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> frame.dispose());
    }

    @Test
    void theSentenceThenTheChartThenTheUncertaintyToQuoteStandOnTheFirstScreen() throws Exception {
        assertThat(EventThread.comes(() ->
                        ((JTextComponent) named("quoted")).getText().startsWith("Uncertainty to report with G =")))
                .isTrue();
        EventThread.settle();
        List<String> order = List.of("verdict", "plot.by-trial", "quoted");
        int bottom = 0;
        for (String name : order) {
            Component part = named(name);
            int top = SwingUtilities.convertPoint(part, 0, 0, frame.getRootPane()).y;
            assertThat(top).as(name).isGreaterThanOrEqualTo(bottom);
            bottom = top + part.getHeight();
            assertThat(bottom).as(name).isLessThanOrEqualTo(frame.getRootPane().getHeight());
        }
    }

    @Test
    void theTestsAreShownWhenTheyAreAskedForByKey() throws Exception {
        assertThat(named("test.wrong.0").isShowing()).isFalse();
        assertThat(named("figure.0").isShowing()).isFalse();
        EventThread.run(() -> {
            frame.toFront();
            ((JComponent) named("tests.show")).requestFocus();
        });
        assertThat(EventThread.comes(() -> named("tests.show").isFocusOwner())).isTrue();
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> named("test.wrong.0").isShowing())).isTrue();
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_N);
        assertThat(EventThread.comes(() -> named("figure.0").isShowing())).isTrue();
        assertThat(KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
                .isSameAs(named("numbers.show"));
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
