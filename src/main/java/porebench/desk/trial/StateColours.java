package porebench.desk.trial;

import java.awt.Color;
import javax.swing.UIManager;
import porebench.chart.look.TrialPoint;

/** The theme's colours of a trial's state; words and shape say the same. */
final class StateColours {
    private StateColours() {}

    static Color of(TrialPoint.State state) {
        Color named = UIManager.getColor(
                switch (state) {
                    case COUNTED -> "Porebench.good";
                    case STRUCK -> "Porebench.quiet";
                    case VOID -> "Porebench.error";
                });
        return named == null ? UIManager.getColor("Label.foreground") : named;
    }
}
