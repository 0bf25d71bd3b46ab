package porebench.desk.form;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/** As high as some lines, whatever stands in it: words come and go without moving what is below. More of them are scrolled. */
public final class KeptRoom extends JPanel {
    private static final long serialVersionUID = 1L;

    private final int lines;

    public KeptRoom(JComponent words, int lines) {
        super(new BorderLayout());
        this.lines = lines;
        TallPanel inside = new TallPanel(new BorderLayout());
        inside.setOpaque(false);
        inside.add(words, BorderLayout.NORTH);
        JScrollPane scroll = inside.scrolled();
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        setOpaque(false);
        add(scroll);
        inside.setFocusable(false);
        words.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                // The keyboard comes to it only where there is more to scroll to.
                inside.setFocusable(words.getHeight() > getHeight());
            }
        });
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(0, lines * getFontMetrics(getFont()).getHeight());
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    public Dimension getMaximumSize() {
        return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
    }
}
