package porebench.desk.form;

import java.awt.Component;
import java.awt.Container;
import java.awt.FocusTraversalPolicy;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/**
 * The way of Enter through a form: from field to field, never into a box with units or a tick, where a number typed without
 * looking would be lost. From the last field it presses the default button of a dialog, or goes on to what comes after the form:
 * a field, a table or the button of a command.
 */
public final class EnterOrder {
    private static final String GO_ON = "next field";

    private final List<JComponent> fields = new ArrayList<>();
    private final Set<Component> besides = new HashSet<>();
    private Runnable then = () -> {};
    private boolean isThenSaid;

    /** Adds a field behind those that are there. */
    void add(JComponent field) {
        fields.add(field);
        bind(field, () -> goOn(field));
    }

    /** Lets Enter pass by a field from now on, since it is only chosen how something is shown; Enter still comes out of it. */
    void passBy(JComponent field) {
        int at = fields.indexOf(field);
        fields.remove(at);
        addBeside(field, fields.get(at - 1));
    }

    /** Adds what stands beside a field: Enter comes out of it, but never into it. */
    void addBeside(JComponent beside, JComponent field) {
        besides.add(beside);
        bind(beside, () -> goOn(field));
    }

    /** Says where Enter goes on from the last field, where the next thing on the page is not it. */
    void then(Runnable next) {
        then = next;
        isThenSaid = true;
    }

    /** Lets Enter in a field do something, unless it closes a list that hangs down. */
    public static void bind(JComponent field, Runnable next) {
        field.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), GO_ON);
        field.getActionMap().put(GO_ON, Commands.of("", () -> {
            if (field instanceof JComboBox<?> box && box.isPopupVisible()) {
                box.setPopupVisible(false);
            } else {
                next.run();
            }
        }));
    }

    private void goOn(JComponent field) {
        Optional<JComponent> next = fields.subList(fields.indexOf(field) + 1, fields.size()).stream()
                .filter(EnterOrder::takesWhatIsTyped)
                .findFirst();
        if (next.isPresent()) {
            next.get().requestFocusInWindow();
            return;
        }
        JRootPane root = SwingUtilities.getRootPane(field);
        JButton quick = root == null ? null : root.getDefaultButton();
        if (quick == null && isThenSaid) {
            then.run();
        } else if (quick == null) {
            leave(field);
        } else {
            quick.doClick();
        }
    }

    private static boolean takesWhatIsTyped(JComponent field) {
        boolean isOpen = field.isShowing() && field.isEnabled() && field.isFocusable();
        return isOpen
                && !(field instanceof AbstractButton)
                && !(field instanceof JTextComponent text && !text.isEditable());
    }

    /** Goes on behind the form, past what stands beside its fields and what is only chosen or ticked. */
    private void leave(JComponent field) {
        Container root = field.getFocusCycleRootAncestor();
        FocusTraversalPolicy policy = root == null ? null : root.getFocusTraversalPolicy();
        Component next = policy == null ? null : policy.getComponentAfter(root, field);
        while (policy != null && next != null && next != field && !isNext(next)) {
            next = policy.getComponentAfter(root, next);
        }
        if (next != null) {
            next.requestFocusInWindow();
        }
    }

    private boolean isNext(Component next) {
        boolean isOfTheForm = besides.contains(next) || fields.contains(next);
        return !isOfTheForm
                && (next instanceof JTable
                        || next instanceof JButton
                        || next instanceof JTextComponent text && text.isEditable());
    }
}
