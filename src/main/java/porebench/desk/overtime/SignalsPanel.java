package porebench.desk.overtime;

import com.formdev.flatlaf.util.UIScale;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.chart.look.PointLook;
import porebench.chart.look.StateShape;
import porebench.chart.look.TrialPoint;
import porebench.desk.Looks;
import porebench.desk.form.Commands;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;

/** The signals in words, the newest first: at which point, what happened, and what to check. */
final class SignalsPanel {
    private static final int MOST = 12;
    private static final int MARK = 13;

    private final OverTimeModel model;
    private final Texts texts;
    private final Consumer<String> mark;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 3, gapy 8", "[]8[]12[grow,fill,0::]", "[top]"));

    /**
     * Makes the list.
     *
     * @param mark marks a point in the plot by its trial
     */
    SignalsPanel(OverTimeModel model, Consumer<String> mark) {
        this.model = model;
        this.texts = model.texts();
        this.mark = mark;
        panel.setOpaque(false);
        panel.setName("overtime.signals");
    }

    JPanel component() {
        return panel;
    }

    void refresh() {
        panel.removeAll();
        Charted outcome = model.outcome();
        List<Charted.Spell> newest = new ArrayList<>(outcome.spells());
        Collections.reverse(newest);
        SignalWords words = model.signalWords();
        for (int i = 0; i < Math.min(MOST, newest.size()); i++) {
            Charted.Signal signal = newest.get(i).first();
            String trial = outcome.series()
                    .points()
                    .get(signal.index())
                    .first()
                    .trial()
                    .id()
                    .text();
            JButton show =
                    Commands.button("signal." + i, Commands.of(words.point(signal.index()), () -> mark.accept(trial)));
            show.getAccessibleContext().setAccessibleDescription(texts.get("signals.show", trial));
            WrappedText said = new WrappedText("signal.said." + i, "", words.said(newest.get(i)));
            PointLook look = outcome.series().isSimulated() ? PointLook.SIMULATED_SIGNAL : PointLook.SIGNAL;
            panel.add(
                    new JLabel(new StateShape(look, Looks.of(TrialPoint.State.VOID), UIScale.scale(MARK))), "gaptop 6");
            panel.add(show);
            panel.add(said, "wmin 0, growx, gaptop 4");
        }
        if (newest.isEmpty()) {
            tell(texts.get("signals.none"));
        } else if (newest.size() > MOST) {
            tell(texts.get("signals.more", newest.size() - MOST));
        }
        panel.revalidate();
    }

    private void tell(String sentence) {
        panel.add(new WrappedText("signals.words", "quiet", sentence), "span 3, wmin 0, growx");
    }
}
