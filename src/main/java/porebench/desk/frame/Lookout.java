package porebench.desk.frame;

import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JComponent;
import javax.swing.Timer;
import porebench.desk.DeskModel;
import porebench.method.Texts;

/** Sees every few seconds whether another window changed the lab book, and shows what goes by the clock. */
final class Lookout {
    private static final int EVERY_MILLISECONDS = 2000;

    private final DeskModel desk;
    private final JComponent over;
    private final Texts texts;
    private final Runnable byTheClock;
    private final Timer timer = new Timer(EVERY_MILLISECONDS, event -> look());
    private boolean ended;

    /**
     * Makes it.
     *
     * @param byTheClock shows what goes by the clock
     */
    Lookout(DeskModel desk, JComponent over, Texts texts, Runnable byTheClock) {
        this.desk = desk;
        this.over = over;
        this.texts = texts;
        this.byTheClock = byTheClock;
    }

    void begin() {
        timer.start();
    }

    void end() {
        ended = true;
        timer.stop();
    }

    /** Returns what looks at once when the window comes to the front, and closes it when the person wants that. */
    WindowAdapter andClosing(Runnable close) {
        return new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                close.run();
            }

            @Override
            public void windowActivated(WindowEvent event) {
                look();
            }
        };
    }

    /** Looks at once. */
    void look() {
        if (!ended) {
            byTheClock.run();
        }
        if (!ended && !desk.tools().tasks().isBusy()) {
            desk.refresh(failure -> {
                timer.stop();
                desk.tools().asker().failure(over, texts.get("frame.looking"), failure);
            });
        }
    }
}
