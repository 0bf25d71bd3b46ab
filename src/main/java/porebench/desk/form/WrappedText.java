package porebench.desk.form;

import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.text.DefaultCaret;

/** Text to read that breaks its lines at the width it is given; its layout constraint must let it shrink, {@code wmin 0}. */
public final class WrappedText extends JTextArea {
    private static final long serialVersionUID = 1L;

    /** In the layout of what comes and goes: its room is kept while it says nothing. */
    public static final String ROOM_KEPT = "hidemode 0";

    private int lines;

    /**
     * Makes a text.
     *
     * @param name the component's name
     * @param styleClass how it looks, such as {@code quiet}
     */
    public WrappedText(String name, String styleClass) {
        setName(name);
        setEditable(false);
        setFocusable(false);
        setOpaque(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setBorder(BorderFactory.createEmptyBorder());
        putClientProperty("FlatLaf.styleClass", styleClass);
    }

    /** Makes a text that says something from the beginning. */
    public WrappedText(String name, String styleClass, String words) {
        this(name, styleClass);
        setText(words);
    }

    /** Keeps the room of some lines, whatever is said: what stands below does not move. More words are seen when pointed at. */
    public WrappedText keepingRoom(int some) {
        lines = some;
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension wanted = super.getPreferredSize();
        return lines == 0 ? wanted : new Dimension(wanted.width, lines * getRowHeight());
    }

    /** Says something; a text with nothing to say takes no room unless it is kept. */
    public void say(String words) {
        setText(words);
        setVisible(!words.isEmpty());
        if (lines > 0) {
            setToolTipText(words.isEmpty() ? null : words);
        }
    }

    /** How high the text is follows from how wide it is, so another width lays the page out once more. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean isOther = width != getWidth();
        super.setBounds(x, y, width, height);
        if (isOther) {
            // Not now: in the middle of a layout nobody would notice.
            SwingUtilities.invokeLater(this::revalidate);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBorder(BorderFactory.createEmptyBorder());
        // Otherwise a new text would scroll the page to where it stands.
        if (getCaret() instanceof DefaultCaret caret) {
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
    }
}
