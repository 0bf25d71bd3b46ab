package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.balance.NeedsTerminals;
import porebench.balance.SerialPorts;
import porebench.balance.Terminals;
import porebench.desk.BenchBook;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;
import porebench.desk.Settings;
import porebench.desk.TurnedClock;
import porebench.desk.frame.Theme;
import porebench.desk.trial.TrialsPage;
import porebench.record.Trial;
import porebench.record.book.Version;

/** The bench view in a real window, worked by the keypad alone. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class BenchWindowTest {
    private static final double INCH = 25.4;

    private final TurnedClock clock = new TurnedClock();
    private final BenchBook bench = new BenchBook(Locale.ENGLISH, clock);
    private JFrame frame;
    private final AtomicInteger rung = new AtomicInteger();
    private BenchView view;
    private Keys keys;

    @BeforeEach
    void open() throws Exception {
        keys = new Keys();
        bench.select();
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            frame = new JFrame();
            frame.setSize(1000, 700);
            frame.setVisible(true);
            view = new BenchView(bench.desk, new TrialsPage(bench.desk).gate(), rung::incrementAndGet);
        });
        openBench();
    }

    private void openBench() throws Exception {
        EventThread.run(() -> view.open(frame));
        Keys.bringTo(() -> dialog().getContentPane());
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> {
            view.leave();
            frame.dispose();
        });
    }

    private JDialog dialog() {
        return List.of(frame.getOwnedWindows()).stream()
                .filter(Component::isShowing)
                .map(JDialog.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private Optional<Component> named(String name) {
        return all(dialog()).filter(part -> name.equals(part.getName())).findFirst();
    }

    private static Stream<Component> all(Container parent) {
        return Stream.of(parent.getComponents())
                .flatMap(part ->
                        Stream.concat(Stream.of(part), part instanceof Container inner ? all(inner) : Stream.empty()));
    }

    private String title() {
        return ((JLabel) named("benchTitle").orElseThrow()).getText();
    }

    private String said(String name) {
        return ((JTextArea) named(name).orElseThrow()).getText();
    }

    private BigDigits digits() {
        return (BigDigits) named("benchDigits").orElseThrow();
    }

    private void await(String title) throws Exception {
        assertThat(EventThread.comes(() -> title().equals(title)))
                .as("the bench comes to: " + title + ", but is at " + EventThread.call(this::title))
                .isTrue();
    }

    /** Types on the keypad, whose decimal key is a point. */
    private void pad(String digits) {
        for (char sign : digits.toCharArray()) {
            keys.strike(sign == '.' ? KeyEvent.VK_PERIOD : KeyEvent.VK_NUMPAD0 + (sign - '0'));
        }
    }

    private void enter(String at, String digits) throws Exception {
        await(at);
        pad(digits);
        if (!digits.isEmpty()) {
            assertThat(EventThread.comes(() -> digits().text().equals(digits)))
                    .as(digits + " stands in large digits")
                    .isTrue();
        }
        keys.strike(KeyEvent.VK_ENTER);
    }

    private void toSoak(String fine, String coarse) throws Exception {
        enter("Meter", "");
        enter("Starting water", "21.5");
        await("Weigh the fine aggregate");
        assertThat(said("benchLimits")).matches("at least 4\\d{3}, at most 4\\d{3} g");
        enter("Weigh the fine aggregate", fine);
        enter("Weigh the coarse aggregate", coarse);
        await("Add and rod");
        assertThat(digits().text() + said("benchHow")).matches("25Sand before stone.*Tap the sides.*");
        enter("Add and rod", "");
        enter("Foam off", "");
        await("Soak");
    }

    private void fromSoak(String gauge) throws Exception {
        enter("Soak", "");
        enter("Cover", "");
        enter("Fill with water", "");
        enter("Withdraw water", "420");
        enter("Pump", "");
        enter("Read the gauge", gauge);
        await("Factor of this trial");
        keys.strike(KeyEvent.VK_ENTER);
    }

    private Optional<Trial> kept(String id) {
        return bench.book.latest(Trial.class, id).map(Version::value);
    }

    @Test
    void threeTrialsAreMadeOnTwoBowlsWithTheKeypadAlone() throws Exception {
        toSoak("4902.5", "7351");
        EventThread.run(() -> clock.turn(Duration.ofMinutes(6)));
        keys.strike(KeyEvent.VK_MULTIPLY);
        toSoak("4898", "7350");
        EventThread.run(() -> clock.turn(Duration.ofMinutes(9)));
        keys.strike(KeyEvent.VK_ADD);
        assertThat(EventThread.comes(() -> digits().text().equals("15:00"))).isTrue();
        fromSoak("6.4");
        await("Trial K7-T1 is saved");
        assertThat(EventThread.call(() -> digits().text())).isEqualTo("0.40");
        assertThat(said("benchLimits")).startsWith("At least 2 more trials");
        EventThread.run(() -> clock.turn(Duration.ofMinutes(6)));
        keys.strike(KeyEvent.VK_ADD);
        fromSoak("6.3");
        // Both bowls are of one meter: six minutes after the other trial it cannot have held this one for fifteen.
        assertThat(EventThread.comes(() -> said("benchMessage").contains("a soak of 15 min does not fit between")))
                .isTrue();
        pad("1");
        keys.strike(KeyEvent.VK_ENTER);
        await("Trial K7-T2 is saved");
        keys.strike(KeyEvent.VK_ENTER);
        toSoak("4900", "7349");
        EventThread.run(() -> clock.turn(Duration.ofMinutes(15)));
        fromSoak("6.4");
        await("Trial K7-T3 is saved");
        assertThat(kept("K7-T2").orElseThrow().readings().fine().orElseThrow().number())
                .isEqualTo("4898");
        assertThat(kept("K7-T2").orElseThrow().keptBecause()).isPresent();
        assertThat(kept("K7-T3").orElseThrow().keptBecause()).isEmpty();
        assertThat(kept("K7-T3").orElseThrow().readings().soakMinutes().orElseThrow())
                .isEqualTo("15");
    }

    @Test
    void aTypeAMeterHasItsOwnStepsWithTheKeypadAlone() throws Exception {
        enter("Meter", "2");
        assertThat(EventThread.comes(() -> digits().text().equals("E-1"))).isTrue();
        toSoak("4902.5", "7351");
        EventThread.run(() -> clock.turn(Duration.ofMinutes(15)));
        assertThat(EventThread.comes(() -> rung.get() >= 2)).isTrue();
        for (String step : List.of("Soak", "Cover", "Fill with water", "Bring the level to zero", "Pump")) {
            enter(step, "");
        }
        enter("Read h1, under pressure", "0.9");
        enter("Read h2, pressure released", "0.4");
        await("Factor of this trial");
        assertThat(EventThread.call(() -> digits().text())).isEqualTo("0.50");
        assertThat(said("benchCaution")).contains("clamps");
        keys.strike(KeyEvent.VK_ENTER);
        await("Trial K7-T1 is saved");
        assertThat(kept("K7-T1").orElseThrow().readings().h2Percent()).contains(new BigDecimal("0.4"));
    }

    @Test
    void aReaderOfCodesTurnsToTheBowlOfTheMixOnTheSheet() throws Exception {
        enter("Meter", "");
        await("Starting water");
        keys.strike(KeyEvent.VK_MULTIPLY);
        await("Meter");
        types("PBMIX:K7");
        await("Starting water");
        types("PBMIX:of no mix");
        assertThat(EventThread.comes(() -> said("benchMessage").contains("to no mix of the lab book")))
                .isTrue();
    }

    @Test
    void leftByEscapeItIsComeBackToWhereItWas() throws Exception {
        enter("Meter", "");
        await("Starting water");
        pad("2");
        assertThat(EventThread.comes(() -> digits().text().equals("2"))).isTrue();
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> !view.isOpen())).isTrue();
        openBench();
        await("Starting water");
        assertThat(EventThread.call(() -> digits().text())).isEqualTo("2");
    }

    @Test
    void aLetterSaysThatItDoesNothing() throws Exception {
        keys.strike(KeyEvent.VK_G);
        assertThat(EventThread.comes(() -> said("benchMessage").contains("does nothing")))
                .isTrue();
    }

    @Test
    void minusAndBackspaceGoBackAndTheReadingIsStillThere() throws Exception {
        enter("Meter", "");
        enter("Starting water", "21.5");
        await("Weigh the fine aggregate");
        keys.strike(KeyEvent.VK_SUBTRACT);
        await("Starting water");
        assertThat(EventThread.call(() -> digits().text())).isEqualTo("21.5");
        keys.strike(KeyEvent.VK_ENTER);
        await("Weigh the fine aggregate");
        keys.strike(KeyEvent.VK_BACK_SPACE);
        await("Starting water");
    }

    @Test
    void anEnterThatBouncesOrIsHeldDownIsOneStroke() throws Exception {
        enter("Meter", "");
        enter("Starting water", "21.5");
        enter("Weigh the fine aggregate", "4800");
        // The bounce would keep the mass, and the next number would be of the coarse aggregate.
        keys.strike(KeyEvent.VK_ENTER);
        enter("Weigh the fine aggregate", "4902.5");
        enter("Weigh the coarse aggregate", "7351");
        await("Add and rod");
        EventThread.run(() -> {
            for (int i = 0; i < 3; i++) {
                Component bench = dialog().getContentPane();
                bench.dispatchEvent(new KeyEvent(
                        bench,
                        KeyEvent.KEY_PRESSED,
                        System.currentTimeMillis() + 600 * i,
                        0,
                        KeyEvent.VK_ENTER,
                        '\n',
                        KeyEvent.KEY_LOCATION_STANDARD));
            }
        });
        assertThat(EventThread.call(this::title)).isEqualTo("Foam off");
    }

    /** Forty millimetres, and twenty for a target, on a screen with room for them; smaller only with the screen. */
    @Test
    void digitsAreReadFromTwoMetresAndTargetsAreForGloves() throws Exception {
        enter("Meter", "");
        await("Starting water");
        Dimension screen = Toolkit.getDefaultToolkit().getScreenSize();
        double room = Math.min(1, Math.min(screen.width / 1024.0, screen.height / 700.0));
        double dots = Math.min(Toolkit.getDefaultToolkit().getScreenResolution(), 96 * room) / INCH;
        assertThat(EventThread.call(() -> digits().digitHeight())).isGreaterThan(39 * dots);
        for (Component part : EventThread.call(() -> all(dialog()).toList())) {
            if (part instanceof JButton button) {
                assertThat(Math.min(button.getWidth(), button.getHeight()))
                        .as(button.getName())
                        .isGreaterThan((int) (19.5 * dots));
                assertThat(button.isFocusable()).isFalse();
            }
        }
    }

    @Test
    @NeedsTerminals
    void aBalanceOnASerialLineFillsTheMass() throws Exception {
        try (Terminals pair = new Terminals()) {
            Settings settings = Settings.inMemory();
            new BalanceSetting(pair.place(), 9600, BalancePattern.USUAL).keep(settings);
            EventThread.run(() -> {
                view.leave();
                view.connect(new SerialPorts(), settings);
            });
            openBench();
            enter("Meter", "");
            enter("Starting water", "21.5");
            await("Weigh the fine aggregate");
            pair.send("US,GS,+  4880.0 g\r\n");
            assertThat(EventThread.comes(() -> said("benchMessage").contains("not at rest")))
                    .isTrue();
            pair.send("ST,GS,+  4902.0 g\r\n");
            assertThat(EventThread.comes(() -> digits().text().equals("4902.0")))
                    .isTrue();
            keys.strike(KeyEvent.VK_ENTER);
            await("Weigh the coarse aggregate");
        }
    }

    /** Many a balance is a keyboard to the machine: it types sign, mass and unit at a speed of its own, and Enter. */
    @Test
    void aBalanceThatTypesFillsTheMassWithSignAndUnit() throws Exception {
        enter("Meter", "");
        enter("Starting water", "21.5");
        await("Weigh the fine aggregate");
        types("US,GS,+  4880.0 g");
        assertThat(EventThread.comes(() -> said("benchMessage").contains("not at rest")))
                .isTrue();
        assertThat(EventThread.call(this::title)).isEqualTo("Weigh the fine aggregate");
        types("+  4902.5 g");
        await("Weigh the coarse aggregate");
        assertThat(said("benchBefore")).contains("4902.5 g");
        types("7351.0");
        await("Add and rod");
        assertThat(said("benchBefore")).contains("7351.0 g");
        // By hand a sign is what it is on the bench.
        keys.strike(KeyEvent.VK_SUBTRACT);
        await("Weigh the coarse aggregate");
        keys.strike(KeyEvent.VK_SUBTRACT);
        await("Weigh the fine aggregate");
    }

    /** What a device types that is a keyboard: each sign ten milliseconds after the one before, and Enter. */
    private void types(String line) throws Exception {
        EventThread.run(() -> {
            Component bench = dialog().getContentPane();
            long when = System.currentTimeMillis();
            for (char sign : line.toCharArray()) {
                bench.dispatchEvent(new KeyEvent(bench, KeyEvent.KEY_TYPED, when, 0, KeyEvent.VK_UNDEFINED, sign));
                when += 10;
            }
            for (int id : new int[] {KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED}) {
                bench.dispatchEvent(new KeyEvent(bench, id, when, 0, KeyEvent.VK_ENTER, '\n'));
            }
        });
    }

    @Test
    void theButtonsDoWhatTheKeysDo() throws Exception {
        click("key.enter");
        await("Starting water");
        click("key.2");
        click("key.1");
        click("key.decimal");
        click("key.5");
        assertThat(EventThread.call(() -> digits().text())).isEqualTo("21.5");
        click("key.erase");
        click("key.enter");
        await("Weigh the fine aggregate");
        click("key.new");
        await("Meter");
        click("key.next");
        await("Weigh the fine aggregate");
        click("bowl.2");
        await("Meter");
        click("key.leave");
        assertThat(EventThread.call(() -> view.isOpen())).isFalse();
    }

    private void click(String name) throws Exception {
        EventThread.run(() -> ((JButton) named(name).orElseThrow()).doClick());
    }
}
