package porebench.desk;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Font;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import porebench.chart.look.ChartLook;
import porebench.chart.look.TrialPoint;

/** The look of plots and marks in the theme that is shown now. */
public final class Looks {
    private static final float PAPER_POINTS = 11;

    private Looks() {}

    /** Returns the look of plots. */
    public static ChartLook now() {
        return new ChartLook(
                colour("Porebench.box", "Panel.background"),
                colour("Label.foreground", "Label.foreground"),
                colour("Porebench.line", "Label.foreground"),
                of(TrialPoint.State.COUNTED),
                of(TrialPoint.State.STRUCK),
                of(TrialPoint.State.VOID),
                colour("Porebench.warning", "Label.foreground"),
                font(),
                UIScale.getUserScaleFactor());
    }

    /** Calls back when the theme is another one: plots take their colours and fonts when they are made, and must be made anew. */
    public static void onOther(Runnable redraw) {
        UIManager.addPropertyChangeListener(change -> {
            if ("lookAndFeel".equals(change.getPropertyName())) {
                SwingUtilities.invokeLater(redraw);
            }
        });
    }

    /** Returns the look of plots that are kept or printed, whatever the theme. */
    public static ChartLook onPaper() {
        return ChartLook.onPaper(font().deriveFont(PAPER_POINTS));
    }

    /** Returns the colour of a trial's state; words and shape say the same. */
    public static Color of(TrialPoint.State state) {
        return switch (state) {
            case COUNTED -> colour("Porebench.good", "Label.foreground");
            case STRUCK -> colour("Porebench.quiet", "Label.foreground");
            case VOID -> colour("Porebench.error", "Label.foreground");
        };
    }

    /** Calls back once another theme is shown: plots take their colours and fonts when they are made, so that they are made anew. */
    public static void onChange(Runnable made) {
        UIManager.addPropertyChangeListener(change -> {
            if ("lookAndFeel".equals(change.getPropertyName())) {
                SwingUtilities.invokeLater(made);
            }
        });
    }

    private static Font font() {
        return UIManager.getFont("Label.font");
    }

    private static Color colour(String key, String otherwise) {
        Color named = UIManager.getColor(key);
        return named == null ? UIManager.getColor(otherwise) : named;
    }
}
