package porebench.desk.meter;

import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.WrappedText;

/** Sentences below one another. */
final class Sentences {
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 6", "[grow,fill,0::]"));
    private final String styleClass;
    private List<String> shown = List.of();

    /**
     * Makes a list.
     *
     * @param name the component's name; the sentences are named {@code name.0}, {@code name.1} and so on
     * @param styleClass how they look
     */
    Sentences(String name, String styleClass) {
        this.styleClass = styleClass;
        panel.setName(name);
        panel.setOpaque(false);
    }

    JPanel panel() {
        return panel;
    }

    void show(List<String> sentences) {
        if (sentences.equals(shown)) {
            return;
        }
        shown = List.copyOf(sentences);
        panel.removeAll();
        for (String sentence : sentences) {
            WrappedText text = new WrappedText(panel.getName() + "." + panel.getComponentCount(), styleClass);
            text.setText(sentence);
            panel.add(text, "wmin 0");
        }
        panel.revalidate();
        panel.repaint();
    }
}
