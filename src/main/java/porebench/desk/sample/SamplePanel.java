package porebench.desk.sample;

import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.Choices;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.port.Paper;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;

/** The correction sample page as it is seen. */
final class SamplePanel {
    private static final String SAMPLE = "sample";
    private static final String EMPTY = "empty";

    private final DeskModel desk;
    private final SampleModel model;
    private final Texts texts;
    private final JPanel cards = new JPanel(new CardLayout());
    private final WrappedText standing = new WrappedText("sample.standing", "quiet");
    private final WrappedText todays = new WrappedText("sample.todays", "fieldWarning");
    private final WrappedText wetSieved = new WrappedText("sample.wetSieved", "cautionText");
    private final JPanel wetSievedBox = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill]"));
    private final WrappedText runsOver = new WrappedText("sample.runsOver", "fieldWarning");
    private final WrappedText note = new WrappedText("sample.note", "quiet");
    private final WrappedText elsewhere = new WrappedText("sample.elsewhere", "quiet");
    private final WrappedText told = new WrappedText("sample.told", "good");
    private final BowlForm bowl;
    private final MoistureForm moisture;
    private final WaterPanel water;
    private final WeighOutTable weighOut;
    private final ProblemLines lines;
    private final JComboBox<Paper> paper;
    private final SampleActions actions;
    private boolean filling;

    SamplePanel(DeskModel desk, SampleModel model) {
        this.desk = desk;
        this.model = model;
        this.texts = model.texts();
        bowl = new BowlForm(model, desk.tools().numbers(), desk.tools().problemText());
        moisture = new MoistureForm(model, desk.tools().numbers(), desk.tools().problemText());
        water = new WaterPanel(texts, desk.tools().numbers());
        weighOut = new WeighOutTable(texts, desk.tools().numbers());
        lines = new ProblemLines("sample.problems", desk.tools().problemText());
        actions = new SampleActions(desk, model, cards, text -> say(told, text));
        paper = Choices.of(
                "paper",
                List.of(Paper.A4, Paper.LETTER),
                size -> texts.get(size == Paper.A4 ? "paper.a4" : "paper.letter"),
                this::choosePaper);
        cards.setName("sample");
        cards.add(empty(), EMPTY);
        cards.add(sample(), SAMPLE);
        refresh();
    }

    JComponent component() {
        return cards;
    }

    private void choosePaper(Paper chosen) {
        if (!filling) {
            model.choosePaper(chosen);
        }
    }

    private JPanel empty() {
        JPanel panel = new JPanel(new MigLayout("insets 24, fillx", "[grow,fill]"));
        WrappedText text = new WrappedText("sample.empty", "quiet");
        text.setText(texts.get("empty"));
        panel.add(text, "wmin 0");
        return panel;
    }

    private JScrollPane sample() {
        TallPanel page =
                new TallPanel(new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3, gapy 8", "[grow,fill]"));
        page.add(heading("page.title", "h1"));
        page.add(standing, "wmin 0");
        JPanel top = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill,400::760]24[pref!]push", "[top]"));
        JPanel left = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill]"));
        left.add(heading("section.bowl", "h2"), "gapbottom 4");
        left.add(bowl.panel());
        left.add(heading("section.moisture", "h2"), "gaptop 16");
        WrappedText hint = new WrappedText("moisture.note", "quiet");
        hint.setText(texts.get("moisture.note"));
        left.add(hint, "wmin 0, gapbottom 4");
        left.add(moisture.panel());
        top.add(left);
        JPanel right = new JPanel(new MigLayout("insets 0, wrap 1, gapy 16", "[fill]"));
        right.add(water.panel());
        right.add(caution());
        top.add(right);
        page.add(top, "gaptop 8");
        page.add(heading("section.weigh-out", "h2"), "gaptop 16");
        wetSievedBox.putClientProperty("FlatLaf.styleClass", "caution");
        wetSievedBox.add(wetSieved, "wmin 0");
        page.add(wetSievedBox);
        page.add(todays, "wmin 0");
        page.add(weighOut.component());
        page.add(note, "wmin 0");
        page.add(runsOver, "wmin 0");
        page.add(lines.panel(), "wmin 0");
        page.add(elsewhere, "wmin 0");
        page.add(heading("section.sheet", "h2"), "gaptop 16");
        page.add(sheet());
        page.add(told, "wmin 0");
        return page.scrolled();
    }

    private JPanel sheet() {
        JPanel line = new JPanel(new MigLayout("insets 0", "[]8[]16[]8[]"));
        line.add(Form.label(texts.get("label.paper"), paper));
        line.add(paper);
        line.add(Commands.button("sheet.print", actions.print));
        line.add(Commands.button("sheet.save", actions.save));
        return line;
    }

    private JPanel caution() {
        JPanel box = new JPanel(new MigLayout("insets 0, wrap 1, gapy 6", "[grow,fill,280::360]"));
        box.setName("sample.caution");
        box.putClientProperty("FlatLaf.styleClass", "caution");
        box.add(heading("caution.title", "h2"));
        for (String key : List.of("caution.dust", "caution.bowl", "caution.floor")) {
            WrappedText text = new WrappedText(key, "cautionText");
            text.setText(texts.get(key));
            box.add(text, "wmin 0");
        }
        return box;
    }

    private JLabel heading(String key, String styleClass) {
        JLabel label = new JLabel(texts.get(key));
        label.putClientProperty("FlatLaf.styleClass", styleClass);
        return label;
    }

    /** Shows what is chosen and everything that follows from it. */
    void refresh() {
        CardLayout layout = (CardLayout) cards.getLayout();
        layout.show(cards, model.reading().isPresent() ? SAMPLE : EMPTY);
        model.reading().ifPresent(this::show);
        actions.refresh();
    }

    private void show(SampleReading reading) {
        MixDesign mix = model.mix().orElseThrow().value();
        standing.setText(texts.get(
                "standing",
                mix.id().text(),
                mix.title(),
                Integer.toString(model.mix().orElseThrow().number())));
        bowl.refresh();
        moisture.refresh();
        filling = true;
        paper.setSelectedItem(model.paper());
        filling = false;
        List<Problem> due = reading.problems().stream()
                .filter(problem -> problem.kind() != Problem.Kind.NOT_YET)
                .toList();
        List<Problem> others = moisture.show(bowl.show(due));
        lines.show(others);
        water.show(
                reading.sample(),
                reading.meterType(),
                mix.batch().targetAirPercent(),
                mix.batch().wetSieved(),
                desk.units());
        weighOut.show(reading.sample(), reading.weighOut(), model.draft().massUnit());
        say(todays, model.hasMoistureOfToday() ? texts.get("standing.moisture") : "");
        wetSieved.setText(texts.get("wet-sieved"));
        wetSievedBox.setVisible(mix.batch().wetSieved());
        say(runsOver, thirdRunsOver(reading.sample()));
        say(elsewhere, others.isEmpty() ? "" : texts.get("mix-problems"));
        note.setText(note(reading));
        say(told, "");
    }

    private String note(SampleReading reading) {
        if (reading.sample().isEmpty()) {
            boolean noBowl = reading.problems().stream().anyMatch(problem -> problem.kind() == Problem.Kind.NOT_YET);
            return texts.get(noBowl ? "weigh-out.no-bowl" : "weigh-out.none");
        }
        String tolerance = desk.evidence()
                .orElseThrow()
                .profile()
                .figure(FigureName.MASS_TOLERANCE)
                .value();
        return texts.get("weigh-out.note", tolerance);
    }

    private String thirdRunsOver(Optional<CorrectionSample> sample) {
        return sample.filter(CorrectionSample::isThirdTooMuch)
                .map(computed -> texts.get(
                        "first-runs-over",
                        desk.tools().numbers().show(computed.oneThird().in(VolumeUnit.MILLILITRE), 0)))
                .orElse("");
    }

    private static void say(WrappedText place, String text) {
        place.setText(text);
        place.setVisible(!text.isEmpty());
    }
}
