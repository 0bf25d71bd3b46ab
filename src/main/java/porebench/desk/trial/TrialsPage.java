package porebench.desk.trial;

import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import porebench.chart.look.TrialPoint;
import porebench.desk.DeskModel;
import porebench.desk.Screen;
import porebench.desk.SheetImport;
import porebench.desk.form.Choices;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.History;
import porebench.desk.form.SpokenChoices;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.desk.photo.PhotosPanel;
import porebench.desk.table.FilterLine;
import porebench.desk.table.RowTable;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.id.DeterminationId;
import porebench.record.id.TrialId;

/** The page of the selected mix's trials: seen, entered, corrected, struck and imported. */
public final class TrialsPage implements Screen {
    /** A determination with more trials than this, which is rare, scrolls within its table. */
    private static final int MOST_ROWS = 40;

    private final TrialsModel model;
    private final Texts texts;
    private final TrialsActions actions;
    private final TallPanel panel = new TallPanel(
            new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3", "[grow,fill]", "[]12[]4[]12[]"));
    private final WrappedText noMix = new WrappedText("noMix", "quiet");
    private final JPanel content =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 0", "[grow,fill]", ""));
    private final JComboBox<DeterminationsModel.Choice> chooser = new JComboBox<>();
    private final WrappedText purpose = new WrappedText("purpose", "quiet");
    private final WrappedText closed = new WrappedText("closed", "fieldWarning");
    private final WrappedText noTrial = new WrappedText("noTrial", "quiet");
    private final WrappedText stop = new WrappedText("stop", "answer");
    private final WrappedText stopBasis = new WrappedText("stopBasis", "quiet");
    private final RowTable<TrialRow> table;
    private final Action correct;
    private final Action strike;
    private final Action restore;
    private final JLabel storyTitle = Form.heading("", "h2");
    private final WrappedText story = new WrappedText("story", "");
    private final PhotosPanel photos;
    private final JPanel told = told();
    private final BenchPanel entry;
    private final LivePanel live;
    private final Cautions cautions;
    private final JPanel bench;
    private final JScrollPane scroll;
    private final Consumer<Component> openBench;
    private boolean showing;

    public TrialsPage(DeskModel desk) {
        this(desk, over -> {}, (over, taking) -> {});
    }

    /**
     * Makes the page.
     *
     * @param openBench opens the bench view over the screen that something is on
     * @param sheets brings sheets in
     */
    public TrialsPage(DeskModel desk, Consumer<Component> openBench, SheetImport sheets) {
        this.openBench = openBench;
        model = new TrialsModel(desk);
        this.texts = model.texts();
        this.actions = new TrialsActions(model, panel, this::goTo, this::begin, sheets);
        this.correct = Commands.of(texts.get("action.correct"), this::correct);
        this.strike = Commands.of(texts.get("action.strike"), actions::strike);
        this.restore = Commands.of(texts.get("action.restore"), actions::restore);
        this.table = table(model);
        this.entry = new BenchPanel(model, actions);
        this.live = new LivePanel(model);
        this.cautions = new Cautions(texts);
        this.bench = bench();
        this.photos = new PhotosPanel(desk, () -> model.selected().map(TrialRow::id));
        told.add(photos.component(), "wmin 0");
        panel.add(Form.heading(texts.get("page.title"), "h1"));
        noMix.setText(texts.get("no-mix"));
        panel.add(noMix, "wmin 0");
        panel.add(content, "wmin 0");
        content.add(chooserRow(), "wmin 0");
        content.add(purpose, "wmin 0, gaptop 4");
        content.add(stop.keepingRoom(2), "wmin 0, gaptop 8, " + WrappedText.ROOM_KEPT);
        content.add(bench, "wmin 0, gaptop 12");
        closed.setText(texts.get("determination.closed"));
        content.add(closed, "wmin 0, gaptop 10");
        content.add(tableButtons(), "wmin 0, gaptop 16");
        content.add(table.scrolled(), "wmin 0, gaptop 8");
        content.add(noTrial, "wmin 0, gaptop 4");
        content.add(stopBasis, "wmin 0, gaptop 6");
        content.add(told, "wmin 0, gaptop 16");
        bindSave();
        scroll = panel.scrolled();
        model.onChange(this::show);
        show();
    }

    /** Looks at a trial of the selected mix, which it brings into sight, the keyboard on it. */
    public void open(DeterminationId determination, TrialId trial) {
        model.lookAt(determination, trial);
        // After the page has been laid out with what it shows now.
        SwingUtilities.invokeLater(table::reveal);
    }

    /** Asks why a trial should be struck, if it is the one looked at and is not struck already. */
    public void strike(TrialId trial) {
        boolean isLookedAt = model.selected()
                .map(row -> row.id().equals(trial) && !row.judged().isStruck())
                .orElse(false);
        if (isLookedAt) {
            actions.strike();
        }
    }

    /** Returns what a trial passes that is made at the bench, into the determination looked at here. */
    public TrialGate gate() {
        return new TrialGate(model.desk(), model.determinations(), texts);
    }

    @Override
    public JComponent component() {
        return scroll;
    }

    @Override
    public void dropDraft() {
        model.entry().startNew();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.entry().history());
    }

    @Override
    public void save() {
        if (model.entry().history().isChanged()) {
            actions.save();
        }
    }

    private void goTo(List<Problem> problems) {
        entry.goTo(problems);
    }

    private void begin() {
        entry.begin();
    }

    /** Takes the keyboard where a trial begins; on the table while no trial can be added. */
    @Override
    public void focus() {
        if (model.entry().determination().isPresent()) {
            entry.begin();
        } else {
            table.requestFocusInWindow();
        }
    }

    /** Makes the table of trials, as high as they are many; it scrolls sideways where the page is narrower than its columns. */
    private static RowTable<TrialRow> table(TrialsModel model) {
        RowTable<TrialRow> table = new RowTable<>(
                "trials", model.texts().get("page.title"), TrialRow.columns(model.texts(), model.desk()::units));
        table.setMostRows(MOST_ROWS);
        table.onSelect(chosen -> model.select(chosen.map(TrialRow::id)));
        return table;
    }

    private JPanel chooserRow() {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx", "[][grow,fill,0::]", "[]8[]"));
        chooser.setName("determination");
        SpokenChoices.follow(chooser);
        chooser.setPrototypeDisplayValue(new DeterminationsModel.Choice(new DeterminationId("-"), "-"));
        chooser.addActionListener(event -> {
            if (!showing && chooser.getSelectedItem() instanceof DeterminationsModel.Choice choice) {
                model.choose(choice);
            }
        });
        row.add(Form.label(texts.get("determination.label"), chooser));
        // What is chosen is long: the buttons stand below it, lest it be cut off in a small window.
        row.add(chooser, "wmin 0, wrap");
        JPanel buttons = new JPanel(new MigLayout("insets 0", "[]8[]8[]"));
        buttons.add(Commands.button("begin", Commands.of(texts.get("determination.begin"), actions::begin)));
        buttons.add(Commands.button("import", Commands.of(texts.get("action.import"), actions::importSheet)));
        buttons.add(Commands.button("bench", Commands.of(texts.get("action.bench"), () -> openBench.accept(panel))));
        row.add(buttons, "skip 1");
        return row;
    }

    private JPanel tableButtons() {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[]8[]8[]16[grow,fill,0::]", "[center]"));
        row.add(Commands.button("correct", correct));
        row.add(Commands.button("strike", strike));
        row.add(Commands.button("restore", restore));
        WrappedText hint = new WrappedText("hint", "quiet", texts.get("story.select"));
        JComponent filter = FilterLine.overMany(table, texts.locale());
        // Where trials are many, what they are looked through by stands in the place of what is known by then.
        filter.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentShown(ComponentEvent event) {
                hint.setVisible(false);
            }

            @Override
            public void componentHidden(ComponentEvent event) {
                hint.setVisible(true);
            }
        });
        hint.setVisible(!filter.isVisible());
        row.add(filter, "split 2, wmin 0, growx");
        row.add(hint, "wmin 0, growx");
        return row;
    }

    private void correct() {
        model.correct();
        entry.begin();
    }

    private JPanel told() {
        JPanel told = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill]", "[]6[]"));
        story.setFocusable(true);
        told.add(storyTitle, "wmin 0");
        told.add(story, "wmin 0");
        return told;
    }

    private JPanel bench() {
        JPanel both =
                new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[grow 67,fill]20[grow 33,fill]", "[top]"));
        JPanel side = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]", "[]20[]"));
        side.add(live.component(), "wmin 0");
        side.add(cautions.component(), "wmin 0");
        both.add(entry.component(), "w 67%, wmin 0");
        both.add(side, "w 33%, wmin 0");
        return both;
    }

    private void bindSave() {
        panel.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, KeyEvent.CTRL_DOWN_MASK), "save trial");
        panel.getActionMap().put("save trial", Commands.of("", actions::save));
    }

    private void show() {
        if (showing) {
            return;
        }
        showing = true;
        boolean hasMix = model.desk().evidence().isPresent();
        noMix.setVisible(!hasMix);
        content.setVisible(hasMix);
        if (hasMix) {
            showChooser();
            table.show(model.rows());
            table.select(row -> model.isSelected(row.id()));
            noTrial.setText(texts.get("table.none"));
            noTrial.setVisible(model.rows().isEmpty());
            stop.say(model.stop().sentence().orElse(""));
            stopBasis.say(model.stop().basis().orElse(""));
            showButtons();
            showBench();
            live.show(entry.show());
            cautions.show(model.entry().type());
            showStory();
        }
        showing = false;
    }

    /** Where no trial can be added there is nothing to enter, unless something is typed already: the trials come first. */
    private void showBench() {
        boolean isClosed = model.entry().determination().isEmpty();
        closed.setVisible(isClosed);
        bench.setVisible(!isClosed || model.entry().history().isChanged());
    }

    private void showChooser() {
        List<DeterminationsModel.Choice> choices = model.determinations().choices();
        Choices.offer(chooser, choices);
        Optional<DeterminationId> chosen = model.determinations().chosen();
        choices.stream()
                .filter(choice -> chosen.filter(choice.id()::equals).isPresent())
                .findFirst()
                .ifPresent(chooser::setSelectedItem);
        chooser.setEnabled(!choices.isEmpty());
        String why = model.determinations().purpose();
        purpose.say(why.isBlank() ? "" : texts.get("determination.purpose", why));
    }

    private void showButtons() {
        Optional<TrialPoint.State> state = model.selected().map(TrialRow::state);
        correct.setEnabled(state.isPresent());
        strike.setEnabled(state.isPresent() && state.get() != TrialPoint.State.STRUCK);
        restore.setEnabled(state.isPresent() && state.get() == TrialPoint.State.STRUCK);
    }

    private void showStory() {
        Optional<TrialRow> row = model.selected();
        told.setVisible(row.isPresent());
        photos.show();
        row.ifPresent(
                one -> storyTitle.setText(texts.get("story.title", one.id().text())));
        String sentences = String.join("\n", model.story());
        if (!story.getText().equals(sentences)) {
            story.setText(sentences);
        }
    }
}
