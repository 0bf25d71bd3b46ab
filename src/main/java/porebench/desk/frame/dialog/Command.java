package porebench.desk.frame.dialog;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import porebench.desk.form.Commands;

/** One command of the window, for menu, button and key; its text carries the mnemonic after an ampersand. */
public final class Command extends AbstractAction {
    private static final long serialVersionUID = 1L;

    private final transient Runnable what;

    public Command(String text, @Nullable String keyStroke, Runnable what) {
        this.what = what;
        say(text);
        if (keyStroke != null) {
            putValue(Action.ACCELERATOR_KEY, KeyStroke.getKeyStroke(keyStroke));
        }
    }

    /** Changes the text. */
    public void say(String text) {
        Commands.say(this, text);
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        what.run();
    }
}
