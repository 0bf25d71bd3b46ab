package porebench.desk.form;

import java.awt.Component;
import java.awt.Dialog;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JProgressBar;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import porebench.method.Texts;
import porebench.port.Pace;

/** Stands over the window while something long goes on: what it is, how far, how long it will take, and the way to stop it. */
final class PaceDialog {
    private static final int LOOK_EVERY_MILLISECONDS = 250;
    private static final int STEPS = 1000;
    private static final int GONE_AFTER_MILLISECONDS = 1000;

    private final JDialog dialog;
    private final JProgressBar bar = new JProgressBar(0, STEPS);
    private final JLabel reached = new JLabel(" ");
    private final Timer looks = new Timer(LOOK_EVERY_MILLISECONDS, event -> look());
    private final JButton stop = new JButton();
    private final Optional<Pace> pace;
    private final Texts texts;
    private boolean stopping;

    /**
     * Makes it.
     *
     * @param pace how far the work is; empty where it does not say, and cannot be stopped
     */
    PaceDialog(Window owner, String frameTitle, String doing, Optional<Pace> pace, Texts texts) {
        this.pace = pace;
        this.texts = texts;
        dialog = new JDialog(owner, frameTitle, Dialog.ModalityType.APPLICATION_MODAL);
        dialog.setName(HeldInput.OPEN);
        dialog.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        dialog.setLayout(new MigLayout("insets 20, wrap 1", "[420::,grow,fill]", "[]12[]6[]16[]"));
        bar.setName("task.bar");
        bar.setIndeterminate(!Motion.isStill());
        reached.setName("task.reached");
        dialog.add(new JLabel(doing));
        dialog.add(bar);
        pace.ifPresent(one -> {
            dialog.add(reached);
            dialog.add(stopping(one), "alignx trailing, growx 0");
        });
        look();
        dialog.pack();
        dialog.setLocationRelativeTo(owner);
    }

    private JButton stopping(Pace ended) {
        stop.setText(texts.get("task.stop"));
        stop.setName("task.stop");
        // Until the work said how far it is, nobody knows whether it would hear.
        stop.setEnabled(false);
        stop.addActionListener(event -> {
            stopping = true;
            stop.setEnabled(false);
            stop.setText(texts.get("task.stopping"));
            ended.end();
        });
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> stop.doClick(),
                        KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
        return stop;
    }

    private void look() {
        Optional<Double> part = pace.flatMap(Pace::part);
        bar.setIndeterminate(part.isEmpty() && !Motion.isStill());
        part.ifPresent(done -> bar.setValue((int) Math.round(done * STEPS)));
        pace.flatMap(one -> one.words(texts.locale())).ifPresent(words -> {
            reached.setText(words);
            stop.setEnabled(!stopping);
        });
    }

    /** Shows it until it is closed. */
    void show() {
        looks.start();
        dialog.setVisible(true);
    }

    /** Takes it away; where it had the keyboard, that goes back to where it was, also where no window manager sees to it. */
    void close() {
        looks.stop();
        boolean hadKeyboard = dialog.isFocused();
        Window owner = dialog.getOwner();
        dialog.setVisible(false);
        // A key struck just now is still on its way to the dialog: where that is gone already, the key is lost.
        Timer gone = new Timer(GONE_AFTER_MILLISECONDS, event -> dialog.dispose());
        gone.setRepeats(false);
        gone.start();
        if (hadKeyboard && owner != null) {
            Optional.ofNullable(owner.getMostRecentFocusOwner()).ifPresent(Component::requestFocus);
        }
    }
}
