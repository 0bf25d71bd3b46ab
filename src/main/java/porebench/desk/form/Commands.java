package porebench.desk.form;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.KeyStroke;

/** Actions that feed buttons, menus and keys alike. */
public final class Commands {
    private Commands() {}

    /**
     * Makes an action.
     *
     * @param text its words, the mnemonic after an ampersand
     * @param doing what it does
     */
    public static Action of(String text, Runnable doing) {
        Action action = new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                doing.run();
            }
        };
        say(action, text);
        return action;
    }

    /**
     * Makes an action that a key does as well.
     *
     * @param stroke the key, as {@link KeyStroke#getKeyStroke(String)} reads it
     */
    public static Action of(String text, String stroke, Runnable doing) {
        Action action = of(text, doing);
        action.putValue(Action.ACCELERATOR_KEY, KeyStroke.getKeyStroke(stroke));
        return action;
    }

    /** Changes the words of an action, the mnemonic after an ampersand. */
    public static void say(Action action, String text) {
        int ampersand = text.indexOf('&');
        action.putValue(Action.NAME, text.replaceFirst("&", ""));
        if (ampersand >= 0 && ampersand + 1 < text.length()) {
            action.putValue(Action.MNEMONIC_KEY, (int) Character.toUpperCase(text.charAt(ampersand + 1)));
            action.putValue(Action.DISPLAYED_MNEMONIC_INDEX_KEY, ampersand);
        }
    }

    /** Gives a box its words, the mnemonic after an ampersand. */
    public static void say(AbstractButton box, String text) {
        int ampersand = text.indexOf('&');
        box.setText(text.replaceFirst("&", ""));
        if (ampersand >= 0 && ampersand + 1 < text.length()) {
            box.setMnemonic(Character.toUpperCase(text.charAt(ampersand + 1)));
            box.setDisplayedMnemonicIndex(ampersand);
        }
    }

    /** Makes a button for an action. */
    public static SteadyButton button(String name, Action action) {
        SteadyButton button = new SteadyButton(action);
        button.setName(name);
        // Who comes to it by Enter goes on by Enter.
        button.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, false), "pressed");
        button.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), "released");
        return button;
    }
}
