package porebench.desk;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether a part of the window follows the desk. A part that nobody sees rests: it computes nothing, and hears once of all
 * that changed meanwhile when it is looked at again.
 */
public final class Attention {
    private final List<Runnable> listeners = new ArrayList<>();
    private boolean isResting;
    private boolean hasMissed;

    Attention() {}

    void add(Runnable listener) {
        listeners.add(listener);
    }

    /** Notes that it was made late, and hears on waking of all that came before. */
    void missed() {
        hasMissed = true;
    }

    void tell() {
        if (isResting) {
            hasMissed = true;
        } else {
            List.copyOf(listeners).forEach(Runnable::run);
        }
    }

    /** From now on it hears of nothing. */
    public void rest() {
        isResting = true;
    }

    /** From now on it hears of every change, and now of those it missed. */
    public void wake() {
        isResting = false;
        if (hasMissed) {
            hasMissed = false;
            tell();
        }
    }
}
