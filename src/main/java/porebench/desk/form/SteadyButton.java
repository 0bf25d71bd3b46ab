package porebench.desk.form;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.util.ArrayList;
import java.util.List;
import javax.swing.Action;
import javax.swing.JButton;

/** A button that is never narrower than it was: with fewer words on it, what stands beside it does not come under the pointer. */
public final class SteadyButton extends JButton {
    private static final long serialVersionUID = 1L;

    private final List<String> others = new ArrayList<>();
    private int widest;

    SteadyButton(Action action) {
        super(action);
    }

    /** Keeps the room for other words that it may say later; an ampersand before the mnemonic takes none. */
    public void keepRoomFor(String words) {
        others.add(words.replaceFirst("&", ""));
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension own = super.getPreferredSize();
        FontMetrics metrics = getFontMetrics(getFont());
        int around = own.width - metrics.stringWidth(getText());
        widest = Math.max(widest, own.width);
        for (String other : others) {
            widest = Math.max(widest, around + metrics.stringWidth(other));
        }
        return new Dimension(widest, own.height);
    }

    @Override
    public void updateUI() {
        widest = 0;
        super.updateUI();
    }
}
