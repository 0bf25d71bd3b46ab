package porebench.desk.form;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import porebench.method.Texts;

/**
 * The reasons that were given before, to choose from beside a field in which one is typed: by Alt and Down, by F4, or by a button.
 * Nothing is chosen by itself, and what is chosen can be typed over.
 */
public final class ReasonMenu {
    private static final int SHOWN = 70;

    private ReasonMenu() {}

    /** Hangs the reasons from a field of one line; its button stands in it. */
    public static void in(JTextField field, Supplier<List<String>> reasons, Locale locale) {
        Texts texts = words(locale);
        JButton button = new JButton("\u25be");
        button.setName("reasons");
        button.setFocusable(false);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        say(button, texts);
        hang(field, button, reasons, texts);
        field.putClientProperty("JTextField.trailingComponent", button);
    }

    /** Hangs the reasons from a field of several lines, and returns the button that stands below it. */
    public static AbstractButton below(JTextComponent field, Supplier<List<String>> reasons, Locale locale) {
        Texts texts = words(locale);
        JButton button = new JButton();
        Commands.say(button, texts.get("reasons.open"));
        button.setName("reasons");
        button.setToolTipText(texts.get("reasons.keys"));
        hang(field, button, reasons, texts);
        return button;
    }

    private static Texts words(Locale locale) {
        return Texts.of("porebench.desk.form.form", locale);
    }

    private static void say(AbstractButton button, Texts texts) {
        button.setToolTipText(texts.get("reasons.keys"));
        button.getAccessibleContext().setAccessibleName(texts.get("reasons.keys"));
    }

    private static void hang(JTextComponent field, AbstractButton button, Supplier<List<String>> reasons, Texts texts) {
        Runnable open = () -> open(field, reasons.get(), texts);
        button.addActionListener(event -> open.run());
        String name = "porebench.reasons";
        field.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, KeyEvent.ALT_DOWN_MASK), name);
        field.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_F4, 0), name);
        field.getActionMap().put(name, Commands.of("", open));
    }

    private static void open(JTextComponent field, List<String> reasons, Texts texts) {
        if (!field.isEditable() || !field.isShowing()) {
            return;
        }
        JPopupMenu menu = new JPopupMenu();
        menu.setName("reasons.menu");
        if (reasons.isEmpty()) {
            menu.add(new JMenuItem(texts.get("reasons.none"))).setEnabled(false);
        }
        for (String reason : reasons) {
            String line = reason.replaceAll("\\s+", " ");
            JMenuItem item = menu.add(line.length() > SHOWN ? line.substring(0, SHOWN) + "…" : line);
            item.setToolTipText(line);
            item.addActionListener(event -> {
                field.setText(reason);
                field.setCaretPosition(reason.length());
                field.requestFocusInWindow();
            });
        }
        JComponent below = field.getParent() instanceof JViewport view ? view : field;
        menu.show(below, 0, below.getHeight());
    }
}
