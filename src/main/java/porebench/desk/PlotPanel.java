package porebench.desk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import porebench.chart.PlotView;
import porebench.desk.form.Commands;
import porebench.desk.form.FileNames;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.port.DataTable;
import porebench.port.OutputFile;
import porebench.port.Picture;

/**
 * A plot under its title, with the way back from zooming and the ways to take it along: copied, or saved as a picture, a
 * page or its figures.
 */
public final class PlotPanel {
    private static final String CSV = "csv";

    private final Tools tools;
    private final Texts texts;
    private final Words words;
    private final String name;
    private final PlotView view;
    private final JLabel title = new JLabel();
    private final WrappedText marked;
    private final Action showAll;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[grow,fill,0::][][][][]", "[]8[]6[]6[]"));
    private final JToggleButton inWords = new JToggleButton();
    private final WrappedText said;
    private boolean opens;

    /**
     * What a plot's panel says, in the person's language.
     *
     * @param title the title of the plot
     * @param fileName the name of the file that is offered, as it is when somebody saves
     * @param subject which mix or meter it shows, to stand in the title of a picture; blank where there is none to name
     * @param isTraining whether the lab book is for training: whatever is taken along then says that it was simulated
     */
    public record Words(
            String title, Supplier<String> fileName, Supplier<String> subject, BooleanSupplier isTraining) {}

    /**
     * Makes the panel of a plot; it is empty until something is shown.
     *
     * @param name the plot's name in the names of its components
     * @param height the height of the plot at 100 %, in pixels
     */
    public PlotPanel(Tools tools, String name, int height, Words words) {
        this.tools = tools;
        this.texts = Texts.of("porebench.desk.desk", tools.locale());
        this.words = words;
        this.name = name;
        view = new PlotView("plot." + name, tools.locale());
        marked = new WrappedText("marked." + name, "quiet");
        said = new WrappedText("said." + name, "");
        said.setVisible(false);
        showAll = Commands.of(texts.get("plot.all"), view::showAll);
        title.putClientProperty("FlatLaf.styleClass", "h2");
        title.setLabelFor(view.component());
        say(words.title());
        JPanel box = new JPanel(new MigLayout("insets 0, fill", "[grow,fill]", "[fill]"));
        box.putClientProperty("FlatLaf.styleClass", "box");
        box.add(view.component(), "wmin 0, h " + height + "!");
        panel.setOpaque(false);
        panel.add(title, "wmin 0");
        JButton all = Commands.button("all." + name, showAll);
        all.setToolTipText(texts.get("plot.hint"));
        panel.add(inWords());
        panel.add(all);
        panel.add(button("copy.", texts.get("plot.copy"), this::copy));
        panel.add(button("save.", texts.get("plot.save"), this::save), "wrap");
        panel.add(box, "span 5, wmin 0, wrap");
        panel.add(marked, "span 5, wmin 0, wrap");
        panel.add(said, "span 5, wmin 0");
        view.onChange(this::refresh);
        refresh();
    }

    /** The same in words under the plot, for who does not see it well: by the button, or by W in the plot. */
    private JToggleButton inWords() {
        inWords.setName("words." + name);
        inWords.setText(texts.get("plot.words"));
        inWords.addActionListener(event -> refresh());
        JComponent plot = view.component();
        plot.getInputMap().put(KeyStroke.getKeyStroke("W"), "in words");
        plot.getActionMap().put("in words", Commands.of("", inWords::doClick));
        return inWords;
    }

    private JButton button(String what, String text, Runnable doing) {
        return Commands.button(what + name, Commands.of(text, doing));
    }

    /** Changes the title, as of a plot that shows now one thing and now another. */
    public void say(String newTitle) {
        title.setText(newTitle);
        view.component().getAccessibleContext().setAccessibleName(newTitle);
    }

    /** Says what opens a point of the plot: it is given the trial's or the calibration's id. */
    public void onOpen(Consumer<String> opener) {
        opens = true;
        view.onOpen(opener);
    }

    private void refresh() {
        showAll.setEnabled(view.isZoomed());
        String point = view.marked().orElse("");
        marked.setText(opens && !point.isEmpty() ? texts.get("plot.opens", point) : point);
        marked.setVisible(!point.isEmpty());
        said.setText(inWords.isSelected() ? String.join("\n", view.said()) : "");
        said.setVisible(!said.getText().isEmpty());
        panel.revalidate();
    }

    /** Returns the panel, always the same. */
    public JComponent component() {
        return panel;
    }

    /** Returns the plot itself, to show something in. */
    public PlotView view() {
        return view;
    }

    private String pictureTitle() {
        String subject = words.subject().get();
        String said = subject.isBlank() ? title.getText() : texts.get("plot.title", subject, title.getText());
        return words.isTraining().getAsBoolean() ? texts.get("plot.title-simulated", said) : said;
    }

    private void copy() {
        try {
            view.copy(pictureTitle(), Looks.onPaper());
        } catch (IllegalStateException busy) {
            // Another program holds the clipboard.
            tools.asker().failure(panel, texts.get("plot.copy"), busy);
        }
    }

    private List<Asker.Kind> kinds() {
        return List.of(
                new Asker.Kind("png", texts.get("plot.kind.png")),
                new Asker.Kind("svg", texts.get("plot.kind.svg")),
                new Asker.Kind("pdf", texts.get("plot.kind.pdf")),
                new Asker.Kind(CSV, texts.get("plot.kind.csv")));
    }

    private void save() {
        Optional<OutputFile> file = tools.asker()
                .fileToWrite(
                        panel,
                        texts.get("plot.save.title"),
                        FileNames.dated(words.fileName().get(), tools.today()),
                        kinds());
        file.ifPresent(this::write);
    }

    private void write(OutputFile file) {
        DataTable table = words.isTraining().getAsBoolean() ? view.table().simulated() : view.table();
        Picture picture = view.picture(pictureTitle(), Looks.onPaper());
        Locale locale = tools.locale();
        boolean figures = Asker.Kind.endingOf(file.path()).equals(CSV);
        tools.tasks()
                .run(
                        texts.get("plot.save.doing"),
                        () -> {
                            if (figures) {
                                tools.sheets().writeTable(file, table);
                            } else {
                                tools.press().draw(picture, locale, file);
                            }
                            return file;
                        },
                        written -> {},
                        failure -> tools.asker().failure(panel, texts.get("plot.save.doing"), failure));
    }
}
