package porebench.desk.bench;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.GraphicsConfiguration;
import java.awt.Window;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import javax.swing.JDialog;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import org.jspecify.annotations.Nullable;
import porebench.desk.DeskModel;
import porebench.desk.Settings;
import porebench.desk.form.Motion;
import porebench.desk.trial.TrialGate;
import porebench.method.Texts;
import porebench.port.SerialLines;

/**
 * The bench view over the whole screen. Digits, Enter and the signs of the keypad work it; it is left at any step and come back to.
 */
public final class BenchView {
    private static final int TICK_MILLISECONDS = 500;
    private static final int TICKS_BETWEEN_BEEPS = 2;

    private final BowlsModel model;
    private final BenchWords words;
    private final BenchBalance balance;
    private final BenchPane pane;
    private final Texts texts;
    private final Timer ticker = new Timer(TICK_MILLISECONDS, event -> tick());
    private final EnterStrokes enters = new EnterStrokes();
    private final Runnable bell;
    private SerialLines serial = SerialLines.none();
    private Settings settings = Settings.inMemory();
    private Optional<SerialLines.Listening> listening = Optional.empty();
    private @Nullable JDialog window;
    private boolean wasSaved;
    private int ticks;

    /**
     * Makes the view; {@link #open} shows it.
     *
     * @param bell rings once; for the soak of a bowl that is over
     */
    public BenchView(DeskModel desk, TrialGate gate, Runnable bell) {
        this.bell = bell;
        this.model = new BowlsModel(desk, gate);
        this.words = new BenchWords(model);
        this.balance = new BenchBalance(model);
        this.texts = model.texts();
        this.pane = new BenchPane(model::turnTo);
        buttons();
        pane.component().addKeyListener(new BenchKeys(model, balance, enters, this::pattern, this::leave));
        pane.component().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                show();
            }
        });
        pane.component().addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                enters.comesUp();
            }
        });
        pane.component().addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                pane.component().requestFocusInWindow();
            }
        });
        model.onChange(this::show);
    }

    private void buttons() {
        for (String digit : new String[] {"7", "8", "9", "4", "5", "6", "1", "2", "3", "0"}) {
            pane.button("key." + digit, digit, () -> model.type(digit.charAt(0)));
        }
        pane.button("key.decimal", model.decimalSign(), () -> model.type('.'));
        pane.button("key.erase", texts.get("button.erase"), model::erase);
        pane.button("key.enter", texts.get("button.enter"), this::tapEnter);
        pane.button("key.back", texts.get("button.back"), model::back);
        pane.button("key.next", texts.get("button.next"), model::turnToNext);
        pane.button("key.new", texts.get("button.new"), model::begin);
        pane.button("key.leave", texts.get("button.leave"), this::leave);
    }

    private void tapEnter() {
        if (enters.taps(EventQueue.getMostRecentEventTime(), model.isAskedTwice())) {
            model.enter();
        }
    }

    /** Says on the bench that nothing there was measured; empty text where it is real. */
    public void sayInvented(String why) {
        pane.sayInvented(why);
    }

    /** Opens it over the screen that a window is on, at the bowl of the mix on the desk. */
    public void open(Window over) {
        if (model.desk().tools().asker().person(pane.component()).isEmpty()) {
            return;
        }
        JDialog shown = new JDialog(over);
        window = shown;
        shown.setName("benchView");
        shown.setTitle(texts.get("title"));
        shown.setUndecorated(true);
        shown.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        shown.setContentPane(pane.component());
        GraphicsConfiguration screen = over.getGraphicsConfiguration();
        shown.setBounds(screen.getBounds());
        shown.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                leave();
            }

            @Override
            public void windowActivated(WindowEvent event) {
                pane.component().requestFocusInWindow();
            }
        });
        model.open();
        shown.setVisible(true);
        SwingUtilities.invokeLater(pane.component()::requestFocusInWindow);
        ticker.start();
        listen();
    }

    /** Leaves the bench; everything on it stays as it is. */
    public void leave() {
        Optional.ofNullable(window).ifPresent(shown -> {
            Window behind = shown.getOwner();
            Component before = behind.getMostRecentFocusOwner();
            shown.dispose();
            // Not every display gives the keyboard back to where it was.
            Optional.ofNullable(before).orElse(behind).requestFocus();
        });
        window = null;
        ticker.stop();
        listening.ifPresent(SerialLines.Listening::close);
        listening = Optional.empty();
    }

    /** Listens to the balance that is set, whenever the bench is on view. */
    public void connect(SerialLines lines, Settings set) {
        serial = lines;
        settings = set;
    }

    /** Returns how the laboratory's balance writes a mass. */
    private BalancePattern pattern() {
        return BalancePattern.parse(BalanceSetting.of(settings).pattern())
                .or(() -> BalancePattern.parse(BalancePattern.USUAL))
                .orElseThrow();
    }

    private void listen() {
        BalanceSetting set = BalanceSetting.of(settings);
        Optional<BalancePattern> pattern = BalancePattern.parse(set.pattern());
        if (!set.place().isBlank() && pattern.isPresent()) {
            listening = Optional.of(serial.listen(
                    set.place(),
                    set.baud(),
                    line -> {
                        BalanceReading reading = pattern.get().read(line);
                        EventQueue.invokeLater(() -> balance.weighed(reading));
                    },
                    failed -> EventQueue.invokeLater(() -> balance.deaf(failed))));
        }
    }

    /** Returns whether it is on view. */
    public boolean isOpen() {
        return window != null;
    }

    /** Rings while the soak of any bowl is over, and shows how long the others last. */
    private void tick() {
        ticks++;
        if (model.rings() && ticks % TICKS_BETWEEN_BEEPS == 0) {
            bell.run();
        }
        show();
    }

    private void show() {
        if (isOpen()) {
            // What rings is lit, and flashes where things may move.
            pane.show(words.screen(), Motion.isStill() || ticks % 2 == 1);
            boolean hasSaved = model.saved().isPresent();
            if (hasSaved && !wasSaved) {
                // Saving may have been told in a window of its own, and not every display gives the keyboard back.
                EventQueue.invokeLater(pane.component()::requestFocus);
            }
            wasSaved = hasSaved;
        }
    }
}
