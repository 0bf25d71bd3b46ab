package porebench.desk;

import java.awt.Dimension;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.chart.PlotView;
import porebench.desk.form.Commands;

/** A plot under its title, with the ways to take it along as a picture. */
public final class PlotPanel {
    private static final Dimension PICTURE = new Dimension(1600, 900);

    private final Tools tools;
    private final Words words;
    private final String name;
    private final PlotView view;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[grow,fill,0::][][]", "[]8[]"));

    /**
     * What a plot's panel says, in the person's language.
     *
     * @param title the title of the plot
     * @param copy the button that copies it
     * @param save the button that saves it
     * @param saveTitle the title of the dialog that asks for a file
     * @param saveDoing what is being done while it is saved
     * @param fileName the name of the file that is offered, as it is when somebody saves
     */
    public record Words(
            String title, String copy, String save, String saveTitle, String saveDoing, Supplier<String> fileName) {}

    /**
     * Makes the panel of a plot; it is empty until something is shown.
     *
     * @param name the plot's name in the names of its components
     * @param height the height of the plot at 100 %, in pixels
     */
    public PlotPanel(Tools tools, String name, int height, Words words) {
        this.tools = tools;
        this.words = words;
        this.name = name;
        view = new PlotView("plot." + name, tools.locale());
        JLabel title = new JLabel(words.title());
        title.putClientProperty("FlatLaf.styleClass", "h2");
        title.setLabelFor(view.component());
        view.component().getAccessibleContext().setAccessibleName(title.getText());
        JPanel box = new JPanel(new MigLayout("insets 0, fill", "[grow,fill]", "[fill]"));
        box.putClientProperty("FlatLaf.styleClass", "box");
        box.add(view.component(), "wmin 0, h " + height + "!");
        panel.setOpaque(false);
        panel.add(title, "wmin 0");
        panel.add(button("copy.", words.copy(), view::copy));
        panel.add(button("save.", words.save(), this::save), "wrap");
        panel.add(box, "span 3, wmin 0");
    }

    private JButton button(String what, String text, Runnable doing) {
        return Commands.button(what + name, Commands.of(text, doing));
    }

    /** Returns the panel, always the same. */
    public JComponent component() {
        return panel;
    }

    /** Returns the plot itself, to show something in. */
    public PlotView view() {
        return view;
    }

    private void save() {
        Optional<Path> file = tools.asker()
                .fileToWrite(panel, words.saveTitle(), words.fileName().get());
        file.ifPresent(path -> tools.tasks()
                .run(
                        words.saveDoing(),
                        () -> {
                            view.savePng(path, PICTURE);
                            return path;
                        },
                        written -> {},
                        failure -> tools.asker().failure(panel, words.saveDoing(), failure)));
    }
}
