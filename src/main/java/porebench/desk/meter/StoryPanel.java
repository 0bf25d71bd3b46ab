package porebench.desk.meter;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Focusing;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.StateMark;
import porebench.desk.form.Choices;
import porebench.desk.form.Commands;
import porebench.desk.form.FileNames;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.TextLink;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.evidence.JudgedCalibration;
import porebench.method.MeterType;
import porebench.method.Texts;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** One meter: its state and what to do, what is in force, its calibrations, and its plots. */
final class StoryPanel {
    private static final String STYLE = "FlatLaf.styleClass";
    private static final int MARK = 16;
    private static final int DIAL_HEIGHT = 340;
    private static final int BOWL_HEIGHT = 280;

    private final TallPanel panel =
            new TallPanel(new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3, gapy 10", "[grow,fill,0::]"));
    private final JComponent scrolled;
    private final MeterModel model;
    private final Texts texts;
    private final WrappedText heading = new WrappedText("meter.heading", "h1");
    private final JComboBox<MeterId> chooser;
    private final JLabel mark = new JLabel();
    private final WrappedText state = new WrappedText("meter.state", "h2");
    private final ProblemLines concerns;
    private final Sentences bowl = new Sentences("meter.bowl", "");
    private final JLabel inForceTitle = Form.heading("", "h2");
    private final Sentences inForce = new Sentences("meter.inForce", "");
    private final JPanel usedRow = new JPanel(new MigLayout("insets 6 0 0 0, fillx, wrap 3", "[][70!][grow]"));
    private final JTextField used = new JTextField();
    private final TextLink usedLink;
    private final WrappedText usedSentence = new WrappedText("meter.used", "");
    private final JLabel usedUnit = new JLabel();
    private final RowTable<JudgedCalibration> history;
    private final JComponent historyTable;
    private final WrappedText noHistory;
    private final DetailsPanel details;
    private final PlotPanel dialPlot;
    private final PlotPanel bowlPlot;
    private final PlotPanel elevationPlot;
    private final WrappedText told = new WrappedText("meter.told", "quiet");
    private boolean showing;

    StoryPanel(MeterModel model, Action back, Action begin, Action correct, MeterPrinting printing) {
        this.model = model;
        this.texts = model.texts();
        concerns = new ProblemLines("meter.concerns", model.desk().tools().problemText());
        chooser = Choices.of("meter.choose", List.<MeterId>of(), MeterId::text, this::choose);
        noHistory = new WrappedText("meter.noHistory", "quiet", texts.get("history.none"));
        history = CalibrationTable.of(model);
        history.onSelect(chosen ->
                chosen.ifPresent(one -> model.choose(one.calibration().value().id())));
        historyTable = history.scrolled();
        details = new DetailsPanel(model);
        dialPlot = plot("dial", DIAL_HEIGHT, texts.get("plot.dial"));
        bowlPlot = plot("bowl", BOWL_HEIGHT, texts.get("plot.bowl"));
        elevationPlot = plot("elevation", BOWL_HEIGHT, texts.get("plot.elevation"));
        dialPlot.onOpen(id -> open(new CalibrationId(id)));
        bowlPlot.onOpen(id -> open(new CalibrationId(id)));
        usedLink = new TextLink(used, model::useAt);
        panel.add(head(back, begin));
        panel.add(stateRow(), "gaptop 4");
        panel.add(concerns.panel(), "wmin 0");
        panel.add(boxes(), "gaptop 4, wmin 0");
        panel.add(told, "wmin 0");
        panel.add(historyHead(correct, printing), "gaptop 10");
        panel.add(noHistory, "wmin 0");
        panel.add(historyTable, "wmin 0");
        panel.add(details.component(), "wmin 0");
        panel.add(dialPlot.component(), "gaptop 10, wmin 0");
        panel.add(elevationPlot.component(), "gaptop 10, wmin 0");
        panel.add(bowlPlot.component(), "gaptop 10, wmin 0");
        panel.add(formRow(printing), "gaptop 10, wmin 0");
        told.setVisible(false);
        scrolled = panel.scrolled();
        scrolled.setName("meter.page");
    }

    JComponent component() {
        return scrolled;
    }

    void focus() {
        if (historyTable.isVisible()) {
            history.requestFocusInWindow();
        } else {
            Focusing.find(scrolled).ifPresent(Component::requestFocusInWindow);
        }
    }

    private PlotPanel plot(String name, int height, String title) {
        return new PlotPanel(
                model.desk().tools(),
                name,
                height,
                new PlotPanel.Words(title, () -> pictureName(name), model::heading, model.desk()::isTraining));
    }

    private String pictureName(String plot) {
        String meter =
                model.story().map(known -> known.meter().value().id().text()).orElse("");
        return FileNames.part(meter) + "-" + plot + ".png";
    }

    /** Looks at a calibration, and brings its row into sight. */
    private void open(CalibrationId id) {
        model.choose(id);
        history.reveal();
    }

    private void choose(MeterId meter) {
        if (!showing) {
            model.open(meter);
        }
    }

    private JPanel head(Action back, Action begin) {
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill,0::]16[][]16[]8[]", "[top]"));
        head.add(heading, "wmin 0");
        head.add(Form.label(texts.get("choose"), chooser), "gaptop 5");
        head.add(chooser, "wmax 160");
        head.add(Commands.button("meter.back", back));
        head.add(Commands.button("meter.begin", begin));
        return head;
    }

    private JPanel stateRow() {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx", "[]10[grow,fill,0::]", "[top]"));
        mark.setName("meter.mark");
        row.add(mark, "gaptop 3");
        row.add(state, "wmin 0");
        return row;
    }

    private JPanel boxes() {
        JPanel boxes =
                new JPanel(new MigLayout("insets 0, fillx", "[0:0:,grow 40,fill]16[0:0:,grow 60,fill]", "[top]"));
        JPanel left = box();
        left.add(Form.heading(texts.get("section.bowl-in-force"), "h2"));
        left.add(bowl.panel(), "wmin 0");
        JPanel right = box();
        right.add(inForceTitle);
        right.add(inForce.panel(), "wmin 0");
        usedRow.setOpaque(false);
        used.setName("meter.usedElevation");
        usedRow.add(Form.label(texts.get("label.used-elevation"), used));
        usedRow.add(used, "growx");
        usedRow.add(usedUnit);
        usedRow.add(usedSentence, "span 3, growx, wmin 0");
        right.add(usedRow, "wmin 0");
        boxes.add(left, "growy");
        boxes.add(right, "growy");
        return boxes;
    }

    private static JPanel box() {
        JPanel box = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]"));
        box.putClientProperty(STYLE, "box");
        return box;
    }

    private JPanel historyHead(Action correct, MeterPrinting printing) {
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[grow,0::][]8[]8[]"));
        head.add(Form.heading(texts.get("section.history"), "h2"));
        head.add(Commands.button("record.print", printing.printRecord));
        head.add(Commands.button("record.save", printing.saveRecord));
        head.add(Commands.button("meter.correct", correct));
        return head;
    }

    private JPanel formRow(MeterPrinting printing) {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill,0::]16[]8[]", "[top]"));
        row.add(new WrappedText("form.words", "quiet", texts.get("form.words")), "wmin 0");
        row.add(Commands.button("form.print", printing.printForm));
        row.add(Commands.button("form.save", printing.saveForm));
        return row;
    }

    /** Says what was done. */
    void tell(String words) {
        told.say(words);
    }

    /** Shows the meter as it is. */
    void refresh() {
        showing = true;
        Choices.offer(chooser, model.meters());
        model.story().map(known -> known.meter().value().id()).ifPresent(chooser::setSelectedItem);
        showing = false;
        heading.setText(model.heading());
        model.state().ifPresent(known -> mark.setIcon(new StateMark(known, MARK)));
        state.setText(model.stateSentence());
        concerns.show(model.concerns());
        bowl.show(model.bowlInForce());
        boolean isA = model.story()
                .filter(known -> known.meter().value().type() == MeterType.A)
                .isPresent();
        inForceTitle.setText(texts.get(isA ? "section.column-in-force" : "section.dial-in-force"));
        inForce.show(model.meterInForce());
        boolean hasColumn = model.elevationPlot().isPresent();
        usedRow.setVisible(hasColumn);
        usedUnit.setText(model.desk().units().elevation().symbol());
        usedLink.pull(model.usedElevation());
        usedSentence.setText(model.usedElevationSentence());
        boolean isEmpty = model.calibrations().isEmpty();
        noHistory.setVisible(isEmpty);
        historyTable.setVisible(!isEmpty);
        history.show(model.calibrations());
        history.select(one -> model.chosen().filter(one::equals).isPresent());
        details.refresh();
        showPlots();
        panel.revalidate();
        panel.repaint();
    }

    /** Draws the plots in the look of the theme. */
    void showPlots() {
        show(dialPlot, model.dialPlot(), data -> dialPlot.view().show(data, Looks.now()));
        show(bowlPlot, model.bowlPlot(), data -> bowlPlot.view().show(data, Looks.now()));
        show(elevationPlot, model.elevationPlot(), data -> elevationPlot.view().show(data, Looks.now()));
    }

    private static <D> void show(PlotPanel plot, Optional<D> data, Consumer<D> drawing) {
        plot.component().setVisible(data.isPresent());
        data.ifPresent(drawing);
    }
}
