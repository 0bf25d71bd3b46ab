package porebench.desk.variability;

import com.formdev.flatlaf.util.UIScale;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.chart.look.StateShape;
import porebench.desk.DeskModel;
import porebench.desk.DeterminationSection;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.Screen;
import porebench.desk.Settings;
import porebench.desk.form.Choices;
import porebench.desk.form.Fold;
import porebench.desk.form.Form;
import porebench.desk.form.OnView;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.id.DeterminationId;
import porebench.record.id.TrialId;

/**
 * The page that says whether the trials of a determination agree: the verdict, the plot, the uncertainty to quote, the questions,
 * behind buttons the tests and the numbers, and what is not in the numbers.
 */
public final class VariabilityPage implements Screen {
    private static final int MARK = 13;
    private static final int PLOT_HEIGHT = 250;

    private final VariabilityModel model;
    private final Texts texts;
    private final TallPanel panel =
            new TallPanel(new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3", "[grow,fill]", "[]12[]12[]"));
    private final WrappedText noMix;
    private final JPanel content =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 0", "[grow,fill]", ""));
    private final JScrollPane scroll = panel.scrolled();
    private final JComboBox<VariabilityModel.Choice> chooser;
    private JLabel chooserLabel = new JLabel();
    private final WrappedText verdict = new WrappedText("verdict", "h2");
    private final ProblemLines doubts;
    private final FiguresPanel figures = new FiguresPanel();
    private final WrappedText remark = new WrappedText("remark", "");
    private final QuestionPanel questions;
    private final QuestionPanel known;
    private final TestsPanel tests = new TestsPanel();
    private final QuotedLine quoted;
    private final JCheckBox showsKnown = new JCheckBox();
    private final PlotPanel byTrial;
    private final PlotPanel overTime;
    private final JPanel left = new JPanel(new MigLayout("insets 0, fillx, wrap 2", "[][grow,fill]", "[top]"));
    private final DeterminationSection next;
    private final DeterminationSection last;
    private boolean showing;

    /**
     * Makes the page on its own.
     *
     * @param openTrial turns the window to a trial, also where it is to be struck
     */
    public VariabilityPage(DeskModel desk, Consumer<TrialId> openTrial) {
        this(
                desk,
                openTrial,
                openTrial,
                DeterminationSection.nothing(),
                DeterminationSection.nothing(),
                Settings.inMemory());
    }

    /**
     * Makes the page.
     *
     * @param openTrial turns the window to a trial
     * @param strikeTrial turns the window to a trial and asks why it should be struck
     * @param next what stands below the questions about the same determination
     * @param last what stands below everything else about the same determination
     * @param settings where it is remembered what a person wants to see
     */
    public VariabilityPage(
            DeskModel desk,
            Consumer<TrialId> openTrial,
            Consumer<TrialId> strikeTrial,
            DeterminationSection next,
            DeterminationSection last,
            Settings settings) {
        this.next = next;
        this.last = last;
        model = new VariabilityModel(desk, settings);
        texts = model.texts();
        questions = new QuestionPanel(texts, strikeTrial);
        known = new QuestionPanel(texts, strikeTrial);
        quoted = new QuotedLine(desk, texts);
        doubts = new ProblemLines("doubts", model.desk().tools().problemText());
        byTrial = plot("by-trial", texts.get("section.by-trial"));
        overTime = plot("over-time", texts.get("section.over-time"));
        byTrial.onOpen(id -> openTrial.accept(new TrialId(id)));
        overTime.onOpen(id -> openTrial.accept(new TrialId(id)));
        chooser = Choices.of(
                "determination", List.of(), VariabilityModel.Choice::words, choice -> model.choose(choice.id()));
        left.setName("leftOut");
        noMix = new WrappedText("noMix", "quiet", texts.get("no-mix"));
        panel.add(heading(), "wmin 0");
        panel.add(noMix, "wmin 0");
        panel.add(content, "wmin 0");
        content.add(verdict, "wmin 0");
        content.add(doubts.panel(), "wmin 0, gaptop 10");
        content.add(byTrial.component(), "wmin 0, gaptop 8");
        content.add(quoted.component(), "wmin 0, gaptop 10");
        content.add(questions.component(), "wmin 0, gaptop 18");
        content.add(known.component(), "wmin 0, gaptop 16");
        content.add(knownBox(), "gaptop 6");
        content.add(next.component(), "wmin 0");
        content.add(
                new Fold("tests.show", texts.get("tests.show"), tests.component()).component(), "wmin 0, gaptop 20");
        JPanel numbers = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
        numbers.setOpaque(false);
        numbers.add(figures.component(), "wmin 0");
        numbers.add(remark, "wmin 0, gaptop 6");
        content.add(new Fold("numbers.show", texts.get("numbers.show"), numbers).component(), "wmin 0, gaptop 8");
        content.add(title("section.left", "h2"), "gaptop 20");
        content.add(left, "wmin 0, gaptop 8");
        content.add(overTime.component(), "wmin 0, gaptop 20");
        content.add(last.component(), "wmin 0, gaptop 24");
        model.onChange(this::show);
        // Nothing is worked out for a page that nobody looks at, lest its work stand over the form of another.
        OnView.each(panel, model::workOutKnown);
        OnView.each(panel, quoted::show);
        Looks.onChange(this::show);
        show();
    }

    private PlotPanel plot(String name, String title) {
        return new PlotPanel(
                model.desk().tools(),
                name,
                PLOT_HEIGHT,
                new PlotPanel.Words(
                        title, () -> model.pictureName(name), () -> model.subject(name), model.desk()::isTraining));
    }

    @Override
    public JComponent component() {
        return scroll;
    }

    private JLabel title(String key, String styleClass) {
        return Form.heading(texts.get(key), styleClass);
    }

    /** The title and, beside it, the determination: what is said of it begins right below. */
    private JPanel heading() {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx", "[]24[][grow,fill,0::]"));
        row.add(title("page.title", "h1"));
        chooser.setPrototypeDisplayValue(new VariabilityModel.Choice(new DeterminationId("-"), "-"));
        chooserLabel = Form.label(texts.get("determination.label"), chooser);
        row.add(chooserLabel);
        row.add(chooser, "wmin 0");
        return row;
    }

    private JCheckBox knownBox() {
        showsKnown.setName("known.show");
        showsKnown.setText(texts.get("known.show"));
        showsKnown.addActionListener(event -> model.showKnown(showsKnown.isSelected()));
        return showsKnown;
    }

    void show() {
        if (showing) {
            return;
        }
        showing = true;
        boolean hasMix = model.desk().evidence().isPresent();
        noMix.setVisible(!hasMix);
        chooserLabel.setVisible(hasMix);
        chooser.setVisible(hasMix);
        content.setVisible(hasMix);
        if (hasMix) {
            Verdict said = model.verdict();
            verdict.setText(said.sentence());
            doubts.show(model.doubts());
            showChooser();
            questions.show(model.questions());
            Optional<Finding> besides = model.known();
            known.show(besides.map(List::of).orElse(List.of()));
            known.component().setVisible(besides.isPresent());
            tests.show(
                    Stream.concat(model.questions().stream(), besides.stream()).toList());
            quoted.show(model.judged());
            showsKnown.setSelected(model.showsKnown());
            showsKnown.setVisible(!model.questions().isEmpty());
            figures.show(model.lines());
            remark.say(model.remark().orElse(""));
            model.byTrial().ifPresent(data -> byTrial.view().show(data, Looks.now()));
            byTrial.component().setVisible(model.byTrial().isPresent());
            model.overTime().ifPresent(data -> overTime.view().show(data, Looks.now()));
            showLeftOut();
            Optional<DeterminationId> shown =
                    model.judged().map(one -> one.determination().value().id());
            next.show(shown);
            last.show(shown);
        }
        showing = false;
        panel.revalidate();
        panel.repaint();
        if (panel.isShowing()) {
            model.workOutKnown();
        }
    }

    private void showChooser() {
        List<VariabilityModel.Choice> choices = model.choices();
        Optional<DeterminationId> chosen =
                model.judged().map(judged -> judged.determination().value().id());
        Choices.show(
                chooser,
                choices,
                choices.stream()
                        .filter(choice -> chosen.filter(choice.id()::equals).isPresent())
                        .findFirst());
        chooser.setEnabled(!choices.isEmpty());
    }

    private void showLeftOut() {
        left.removeAll();
        List<VariabilityModel.LeftOut> all = model.leftOut();
        if (all.isEmpty()) {
            left.add(new WrappedText("leftOut.none", "quiet", texts.get("left.none")), "span 2, wmin 0, growx");
        }
        for (int i = 0; i < all.size(); i++) {
            VariabilityModel.LeftOut one = all.get(i);
            left.add(new JLabel(new StateShape(one.state(), Looks.of(one.state()), UIScale.scale(MARK))), "gaptop 2");
            left.add(new WrappedText("leftOut." + i, "", one.sentence()), "wmin 0");
        }
    }
}
