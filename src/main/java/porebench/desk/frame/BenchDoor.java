package porebench.desk.frame;

import java.awt.Component;
import java.awt.Toolkit;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import porebench.desk.Bowl;
import porebench.desk.Bowls;
import porebench.desk.DeskModel;
import porebench.desk.Settings;
import porebench.desk.bench.BenchView;
import porebench.desk.trial.TrialGate;
import porebench.method.Texts;
import porebench.port.SerialLines;

/** The way from the desk to the bench view, and what is heard of the bench at the desk. */
final class BenchDoor {
    /** A soak that nobody ended for longer than this is not rung for at the desk any more; the list still says so. */
    private static final Duration LONGEST_RINGING = Duration.ofMinutes(5);

    private final DeskModel desk;
    private final Supplier<TrialGate> gate;
    private final Bowls bowls;
    private SerialLines serial = SerialLines.none();
    private Settings settings = Settings.inMemory();
    private Supplier<String> invented = () -> "";
    private Runnable bell = () -> Toolkit.getDefaultToolkit().beep();
    private Optional<BenchView> view = Optional.empty();

    /**
     * Makes the way.
     *
     * @param gate what trials made at the bench pass
     */
    BenchDoor(DeskModel desk, Supplier<TrialGate> gate) {
        this.desk = desk;
        this.gate = gate;
        this.bowls = new Bowls(desk);
    }

    /** Gives the serial lines on which a balance may be, and where it is remembered which. */
    void connect(SerialLines lines, Settings set) {
        serial = lines;
        settings = set;
    }

    /** Gives another bell in the place of the machine's own. */
    void ringBy(Runnable other) {
        bell = other;
    }

    private void ring() {
        bell.run();
    }

    /** Says why nothing in the lab book was measured; empty text where it is real. */
    void inventedBecause(Supplier<String> words) {
        invented = words;
    }

    /** Asks which balance stands on the bench. */
    void askForBalance(JComponent over, Texts texts) {
        desk.tools()
                .tasks()
                .workOut(
                        serial::places,
                        places -> new BalanceDialog(texts, settings).ask(over, places),
                        failure -> desk.tools().asker().failure(over, texts.get("balance.title"), failure));
    }

    /** Opens the bench view over the screen that something is on. */
    void open(Component over) {
        if (view.filter(BenchView::isOpen).isEmpty()) {
            BenchView bench = view.orElseGet(
                    () -> desk.make(desk.attention(), () -> new BenchView(desk, gate.get(), this::ring)));
            view = Optional.of(bench);
            bench.connect(serial, settings);
            bench.sayInvented(invented.get());
            bench.open(SwingUtilities.getWindowAncestor(over));
        }
    }

    /** Shows how long the bowls still soak in the list of mixes, and rings for those whose soak is over. */
    void look(JComponent list) {
        List<Bowl> all = bowls.all();
        if (all.isEmpty()) {
            return;
        }
        list.repaint();
        boolean rings = all.stream()
                .filter(bowls::rings)
                .flatMap(bowl -> bowl.soakLeft(desk.tools().clock().instant()).stream())
                .anyMatch(left -> left.plus(LONGEST_RINGING).compareTo(Duration.ZERO) > 0);
        if (rings && view.filter(BenchView::isOpen).isEmpty()) {
            ring();
        }
    }
}
