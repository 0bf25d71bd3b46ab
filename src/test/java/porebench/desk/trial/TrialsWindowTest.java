package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.BenchBook;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;
import porebench.desk.TurnedClock;
import porebench.desk.form.PushedInput;
import porebench.desk.frame.Theme;
import porebench.method.MeterType;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.record.Trial;
import porebench.record.book.Version;

/** The Trials page in a real window, worked by the keyboard alone. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class TrialsWindowTest {
    private static final int MOST_ROUNDS = 30;

    private final TurnedClock clock = new TurnedClock();
    private final BenchBook bench = new BenchBook(Locale.ENGLISH, clock);
    private JFrame frame;
    private TrialsPage page;
    private Keys keys;
    private PushedInput input;

    @BeforeEach
    void open() throws Exception {
        keys = new Keys();
        bench.select();
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            input = PushedInput.push();
            page = new TrialsPage(bench.desk);
            frame = new JFrame();
            frame.setContentPane(page.component());
            frame.setSize(1000, 900);
            frame.setVisible(true);
        });
        takeTheKeyboard();
    }

    /** A display without a window manager hands the keyboard over only when asked, and not always at once. */
    private void takeTheKeyboard() throws Exception {
        boolean taken = false;
        for (int round = 0; round < MOST_ROUNDS && !taken; round++) {
            EventThread.run(() -> {
                frame.toFront();
                frame.requestFocus();
            });
            taken = EventThread.comesWithin(1, () -> !focused().isEmpty());
            // A request made a moment ago may still be on its way and take the keyboard out of a field.
            EventThread.settle();
            taken = taken && EventThread.call(() -> !focused().isEmpty());
        }
        assertThat(taken).as("the window has the keyboard").isTrue();
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> frame.dispose());
        EventThread.run(input::leave);
    }

    private static String focused() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner == null || owner.getName() == null ? "" : owner.getName();
    }

    private void awaitFocus(String name) throws Exception {
        assertThat(EventThread.comes(() -> focused().equals(name)))
                .as("the caret goes to " + name + ", but is in " + EventThread.call(TrialsWindowTest::focused))
                .isTrue();
    }

    private void type(String text) {
        for (char letter : text.toCharArray()) {
            keys.strike(KeyEvent.getExtendedKeyCodeForChar(letter));
        }
    }

    /** Types into the field that has the caret and goes on with Enter. */
    private void enter(String field, String text) throws Exception {
        awaitFocus(field);
        type(text);
        keys.strike(KeyEvent.VK_ENTER);
    }

    /** Strikes keys faster than any hand, though never two in a millisecond; whatever has the caret takes them. */
    private void blind(String text) {
        for (char letter : text.toCharArray()) {
            strikeByHand(KeyEvent.getExtendedKeyCodeForChar(letter));
        }
        strikeByHand(KeyEvent.VK_ENTER);
    }

    private void strikeByHand(int key) {
        keys.strike(key);
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(25));
    }

    private void toMeter() throws Exception {
        boolean there = false;
        for (int round = 0; round < MOST_ROUNDS && !there; round++) {
            takeTheKeyboard();
            keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_R);
            there = EventThread.comesWithin(1, () -> focused().equals("meter"));
        }
        assertThat(there).as("Alt+R goes to the meter").isTrue();
    }

    private Optional<Trial> now(String id) {
        return bench.book.latest(Trial.class, id).map(Version::value);
    }

    private Trial kept(String id) throws Exception {
        assertThat(EventThread.comes(() -> now(id).isPresent()))
                .as("trial " + id + " is kept; the form has "
                        + EventThread.call(() -> page.history().orElseThrow().draft()) + ", the caret is in "
                        + EventThread.call(TrialsWindowTest::focused))
                .isTrue();
        return now(id).orElseThrow();
    }

    /** A number typed while a box with units has the caret is lost, and nobody who looks at the bench sees it. */
    @Test
    void enterGoesPastUnitsAndFromTheLastFieldOfTheHeadPastTheMeter() throws Exception {
        toMeter();
        for (String field :
                List.of("meter", "fine", "coarse", "soak", "waterTemperature", "withdrawn", "gauge", "remarks")) {
            awaitFocus(field);
            if (!field.equals("remarks")) {
                keys.strike(KeyEvent.VK_ENTER);
            }
        }
        EventThread.run(() -> named(frame, "operator").requestFocusInWindow());
        awaitFocus("operator");
        keys.strike(KeyEvent.VK_ENTER);
        awaitFocus("fine");
    }

    @Test
    void aWholeTypeBTrialIsTypedAndSaved() throws Exception {
        toMeter();
        keys.strike(KeyEvent.VK_ENTER);
        enter("fine", "4902.0");
        enter("coarse", "7350");
        enter("soak", "15");
        enter("waterTemperature", "21.5");
        enter("withdrawn", "420");
        enter("gauge", "6.40");
        enter("remarks", "calm");

        Trial trial = kept("K7-T1");
        assertThat(EventThread.comes(() ->
                        ((JTextComponent) named(frame, "liveWords")).getText().equals("K7-T1 is saved: G = 0.40 %.")))
                .as("what was kept is said beside the next trial")
                .isTrue();
        assertThat(trial.readings().fine()).contains(Typed.of("4902.0", MassUnit.GRAM));
        assertThat(trial.readings().gaugePercent().orElseThrow().toPlainString())
                .isEqualTo("6.40");
        assertThat(trial.remarks()).isEqualTo("calm");
        assertThat(bench.asker.asked).isEmpty();
        // Ready for the next one, whose meter is chosen already.
        awaitFocus("fine");
        assertThat(EventThread.call(() -> ((JTextField) named(frame, "trialId")).getText()))
                .isEqualTo("K7-T2");
    }

    @Test
    void aTypeATrialAsksForBothReadingsAndADoubtForAReason() throws Exception {
        bench.asker.reasons.add("read twice by two people");
        toMeter();
        // The first letter of its name chooses the other meter.
        enter("meter", "e");
        enter("elevation", "215.5");
        enter("fine", "4900");
        enter("coarse", "7350");
        enter("soak", "15");
        enter("waterTemperature", "");
        enter("h1", "0.3");
        enter("h2", "0.7");
        awaitFocus("remarks");
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);

        Trial trial = kept("K7-T1");
        assertThat(trial.readings().meterType()).isEqualTo(MeterType.A);
        assertThat(trial.elevationMetres()).contains(new BigDecimal("215.5"));
        assertThat(trial.keptBecause()).contains("read twice by two people");
        assertThat(bench.asker.asked).containsExactly("Save trial K7-T1 with its doubts");
    }

    @Test
    void aLeakIsTickedWithTheSpaceBarAndAMissingFieldIsGoneTo() throws Exception {
        toMeter();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        awaitFocus("withdrawn");
        assertThat(EventThread.call(() -> now("K7-T1"))).isEmpty();
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_Y);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        awaitFocus("fine");
        assertThat(kept("K7-T1").readings().leak()).isTrue();
    }

    /** Three trials in a row, typed with digits and Enter alone, as by somebody who looks at the dial and not at the screen. */
    @Test
    void threeTrialsAreTypedBlind() throws Exception {
        EventThread.run(page::focus);
        awaitFocus("fine");
        // The hand comes to the keypad; what the display still has under way arrives meanwhile.
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(300));
        awaitFocus("fine");
        int made = 0;
        for (String gauge : List.of("6.4", "6.5", "6.4")) {
            // The next sample soaks in the same bowl before it is read.
            EventThread.run(() -> clock.turn(Duration.ofMinutes(20)));
            for (String number : List.of("4900", "7350", "15", "21.5", "420", gauge, "")) {
                blind(number);
            }
            made++;
            assertThat(kept("K7-T" + made)).isNotNull();
        }
        for (int trial = 1; trial <= 3; trial++) {
            assertThat(kept("K7-T" + trial).readings().fine()).contains(Typed.of("4900", MassUnit.GRAM));
            assertThat(kept("K7-T" + trial).readings().waterCelsius()).contains(new BigDecimal("21.5"));
        }
        assertThat(kept("K7-T2").readings().gaugePercent()).contains(new BigDecimal("6.5"));
        assertThat(bench.asker.asked).isEmpty();
        awaitFocus("fine");
    }

    /** A message that comes in the middle of a number must not let the next digit take the place of those before. */
    @Test
    void aNumberThatAnotherWindowInterruptedIsGoneOnWith() throws Exception {
        toMeter();
        enter("meter", "");
        awaitFocus("fine");
        type("52");
        assertThat(EventThread.comes(() -> field("fine").equals("52"))).isTrue();
        JDialog message = EventThread.call(() -> new JDialog(frame));
        JButton close = EventThread.call(() -> new JButton("Close"));
        EventThread.run(() -> {
            message.add(close);
            message.pack();
            message.setVisible(true);
        });
        Keys.bringTo(() -> close);
        EventThread.run(message::dispose);
        Keys.bringTo(() -> named(frame, "fine"));
        type("02");
        assertThat(EventThread.comes(() -> field("fine").length() > 2)).isTrue();
        assertThat(EventThread.comesWithin(5, () -> field("fine").equals("5202")))
                .as(EventThread.call(() -> field("fine")))
                .isTrue();
    }

    private String field(String name) {
        return ((JTextField) named(frame, name)).getText();
    }

    /** On a low window the field that Enter goes to would lie below its edge. */
    @Test
    void thePageFollowsTheKeyboard() throws Exception {
        EventThread.run(() -> frame.setSize(1000, 420));
        toMeter();
        for (int step = 0; step < 7; step++) {
            strikeByHand(KeyEvent.VK_ENTER);
        }
        awaitFocus("remarks");
        JTextField remarks = (JTextField) named(frame, "remarks");
        assertThat(EventThread.comes(() -> remarks.getVisibleRect().height == remarks.getHeight()))
                .isTrue();
        toMeter();
        JComponent meter = (JComponent) named(frame, "meter");
        assertThat(EventThread.comes(() -> meter.getVisibleRect().height == meter.getHeight()))
                .isTrue();
    }

    @Test
    void whoWorksHereMadeTheTrialAndNobodyElseIsGuessed() throws Exception {
        bench.keep(BenchBook.determination(1, BenchBook.TODAY));
        bench.keep(BenchBook.trial("K7-T1", 1, BenchBook.TODAY, "6.4"));
        EventThread.run(() -> {
            bench.desk.setPerson("");
            bench.desk.refresh();
            page.focus();
        });
        assertThat(EventThread.call(() -> ((JTextField) named(frame, "operator")).getText()))
                .isEmpty();
        awaitFocus("fine");
        for (String number : List.of("4900", "7350", "15", "21.5", "420", "6.4", "")) {
            blind(number);
        }
        assertThat(kept("K7-T2").operator()).isEqualTo("Test Person");
    }

    @Test
    void noTwoThingsAreReachedByTheSameKey() throws Exception {
        List<String> keys = EventThread.call(() -> {
            List<String> found = new ArrayList<>();
            collect(frame, found);
            return found;
        });
        // Strike and take back share theirs: only one of them can be done at a time.
        assertThat(keys).filteredOn(key -> key.equals("K")).hasSize(2);
        assertThat(keys)
                .filteredOn(key -> !key.equals("K"))
                .doesNotHaveDuplicates()
                .hasSizeGreaterThan(15);
    }

    private static void collect(Container container, List<String> found) {
        for (Component each : container.getComponents()) {
            int mnemonic = each instanceof JLabel label
                    ? label.getDisplayedMnemonic()
                    : each instanceof AbstractButton button ? button.getMnemonic() : 0;
            if (mnemonic != 0) {
                found.add(String.valueOf((char) mnemonic));
            }
            if (each instanceof Container inner) {
                collect(inner, found);
            }
        }
    }

    private static Component named(Container container, String name) {
        for (Component each : container.getComponents()) {
            if (name.equals(each.getName())) {
                return each;
            }
            if (each instanceof Container inner && named(inner, name) != null) {
                return named(inner, name);
            }
        }
        return null;
    }
}
