package porebench.desk.frame.dialog;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import porebench.desk.form.Form;
import porebench.method.Texts;

/**
 * The band that says that nothing on view was measured: across the window of a training book and of the demo whatever it shows,
 * and across every dialog over a training book. Words and hatching say it, not the colour alone.
 */
public final class TrainingBand extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String MARK = "porebench.training";

    /** Returns the band of a training book. */
    public static TrainingBand ofTraining(Texts texts) {
        return new TrainingBand("training", texts.get("training.word"), texts.get("training.why"));
    }

    /** Returns the band of the demo lab book, whose laboratory is invented. */
    public static TrainingBand ofDemo(Texts texts) {
        return new TrainingBand("demo", texts.get("demo.word"), texts.get("demo.why"));
    }

    private TrainingBand(String name, String saidWord, String saidWhy) {
        super(new MigLayout("insets 5 22 5 22, fillx", "[]18[grow,0::]", "[]"));
        setName(name);
        JLabel word = Form.heading(saidWord, "trainingWord");
        JLabel why = Form.heading(saidWhy, "trainingText");
        word.setName(name + ".word");
        why.setName(name + ".why");
        putClientProperty("FlatLaf.styleClass", "training");
        add(word);
        add(why, "wmin 0");
        getAccessibleContext().setAccessibleName(word.getText() + ". " + why.getText());
    }

    /** Marks everything that opens over a component as of a training book, or as of a real one. */
    public static void mark(JComponent window, boolean isTraining) {
        window.putClientProperty(MARK, isTraining);
    }

    /** Returns whether a dialog over a component shows something of a training book. */
    static boolean isOver(@Nullable Component over) {
        for (Component each = over; each != null; each = each.getParent()) {
            if (each instanceof JComponent component && Boolean.TRUE.equals(component.getClientProperty(MARK))) {
                return true;
            }
        }
        return Optional.ofNullable(over)
                .map(SwingUtilities::getRootPane)
                .filter(root -> root.getContentPane() instanceof JComponent content
                        && Boolean.TRUE.equals(content.getClientProperty(MARK)))
                .isPresent();
    }

    /** Returns a title of something over a component, marked when that is of a training book. */
    public static String title(@Nullable Component over, String title, Texts texts) {
        return isOver(over) ? texts.get("training.title", title) : title;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setColor(UIManager.getColor("Porebench.training.stripe"));
        pen.setStroke(new BasicStroke(1));
        int step = Math.max(8, getHeight() / 3);
        Path2D stripes = new Path2D.Double();
        for (int x = -getHeight(); x < getWidth(); x += step) {
            stripes.moveTo(x, getHeight());
            stripes.lineTo(x + getHeight(), 0);
        }
        pen.draw(stripes);
        pen.dispose();
    }
}
