package porebench.desk.sample;

import java.awt.CardLayout;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.Screen;
import porebench.desk.form.Choices;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Fold;
import porebench.desk.form.Form;
import porebench.desk.form.History;
import porebench.desk.form.KeptRoom;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.port.Paper;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.column.Column;

/** The page that says what to weigh and to pour for the selected mix and a bowl, and prints the trial sheet. */
public final class SamplePage implements Screen {
    private static final String SAMPLE = "sample";
    private static final String EMPTY = "empty";
    /** In lines: what is said of the masses in a small window. */
    private static final int ROOM = 4;

    private final DeskModel desk;
    private final SampleModel model;
    private final Texts texts;
    private final ProblemText problemText;
    private final JPanel cards = new JPanel(new CardLayout());
    private final WrappedText standing = new WrappedText("sample.standing", "quiet");
    private final WrappedText todays = new WrappedText("sample.todays", "fieldWarning");
    private final JPanel wetSieved = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill]"));
    private final WrappedText runsOver = new WrappedText("sample.runsOver", "fieldWarning");
    private final WrappedText note = new WrappedText("sample.note", "quiet");
    private final WrappedText elsewhere = new WrappedText("sample.elsewhere", "quiet");
    private final WrappedText told = new WrappedText("sample.told", "good");
    private final ColumnForm bowl;
    private final JPanel moisturePlace = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill]"));
    private List<Column<SampleReading, BigDecimal>> moistures = List.of();
    private ColumnForm moisture;
    private final Fold settings;
    private List<Problem> knownInFold = List.of();
    private final MassesPanel masses;
    private final WaterPanel water;
    private final WeighOutTable weighOut;
    private final ProblemLines lines;
    private final JComboBox<Paper> paper;
    private final SampleActions actions;

    public SamplePage(DeskModel desk) {
        this.desk = desk;
        model = new SampleModel(desk);
        texts = model.texts();
        problemText = desk.tools().problemText();
        bowl = new ColumnForm(model, problemText).addAll(SampleFields.ALL).passingBy(SampleFields.MASS_UNIT);
        moisture = new ColumnForm(model, problemText);
        settings = new Fold("sample.settings", texts.get("settings.open"), settings());
        masses = new MassesPanel(texts, desk.tools().numbers());
        water = new WaterPanel(texts, desk.tools().numbers());
        weighOut = new WeighOutTable(texts, desk.tools().numbers());
        lines = new ProblemLines("sample.problems", problemText);
        actions = new SampleActions(desk, model, cards, told::say);
        paper = Choices.of(
                "paper",
                List.of(Paper.A4, Paper.LETTER),
                size -> texts.get(size == Paper.A4 ? "paper.a4" : "paper.letter"),
                model::choosePaper);
        cards.setName(SAMPLE);
        cards.add(empty(), EMPTY);
        cards.add(sample(), SAMPLE);
        refresh();
        model.history().onChange(this::refresh);
        desk.onChange(() -> {
            model.followDesk();
            refresh();
        });
    }

    @Override
    public JComponent component() {
        return cards;
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.history());
    }

    private JPanel empty() {
        JPanel panel = new JPanel(new MigLayout("insets 24, fillx", "[grow,fill]"));
        panel.add(new WrappedText("sample.empty", "quiet", texts.get("empty")), "wmin 0");
        return panel;
    }

    private JScrollPane sample() {
        TallPanel page =
                new TallPanel(new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3, gapy 8", "[grow,fill]"));
        page.add(heading("page.title", "h1"));
        page.add(standing, "wmin 0");
        page.add(settings.component(), "wmin 0");
        page.add(lines.panel(), "wmin 0");
        page.add(elsewhere, "wmin 0");
        wetSieved.putClientProperty("FlatLaf.styleClass", "caution");
        wetSieved.add(new WrappedText("sample.wetSieved", "cautionText", texts.get("wet-sieved")), "wmin 0");
        page.add(wetSieved, "wmin 0");
        page.add(masses.component(), "wmin 0");
        page.add(sheet(), "wmin 0");
        page.add(new KeptRoom(said(), ROOM), "wmin 0");
        JPanel beside = new JPanel(new MigLayout("insets 0, fillx", "[pref!]24[grow,fill,0::460]", "[top]"));
        beside.add(water.panel());
        beside.add(caution(), "wmin 0");
        page.add(beside, "wmin 0, gaptop 8");
        page.add(heading("section.weigh-out", "h2"), "gaptop 16");
        page.add(weighOut.component(), "wmin 0");
        return page.scrolled();
    }

    /** Makes what is said of the masses and of the sheet, which comes and goes. */
    private JComponent said() {
        JPanel said = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 2", "[grow,fill,0::]"));
        said.setOpaque(false);
        List.of(told, runsOver, todays, note).forEach(each -> said.add(each, "wmin 0"));
        return said;
    }

    /** Makes what the masses follow from, which is set once and then left alone. */
    private JPanel settings() {
        JPanel all = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill,0::760]"));
        all.add(heading("section.bowl", "h2"), "gapbottom 4");
        all.add(bowl.panel());
        all.add(heading("section.moisture", "h2"), "gaptop 12");
        all.add(new WrappedText("moisture.note", "quiet", texts.get("moisture.note")), "wmin 0, gapbottom 4");
        all.add(moisturePlace);
        return all;
    }

    private JPanel sheet() {
        JPanel line = new JPanel(new MigLayout("insets 0, wrap 4", "[]8[]16[fill]8[fill]"));
        line.add(Form.label(texts.get("label.paper"), paper));
        line.add(paper);
        line.add(Commands.button("sheet.print", actions.print));
        line.add(Commands.button("sheet.save", actions.save));
        line.add(Commands.button("labels.print", actions.printLabels), "skip 2");
        line.add(Commands.button("labels.save", actions.saveLabels));
        return line;
    }

    private JPanel caution() {
        JPanel box = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 6", "[grow,fill]"));
        box.setName("sample.caution");
        box.putClientProperty("FlatLaf.styleClass", "caution");
        box.add(heading("caution.title", "h2"));
        for (String key : List.of("caution.dust", "caution.bowl", "caution.floor")) {
            box.add(new WrappedText(key, "cautionText", texts.get(key)), "wmin 0");
        }
        return box;
    }

    private JLabel heading(String key, String styleClass) {
        return Form.heading(texts.get(key), styleClass);
    }

    /** Shows what is chosen and everything that follows from it. */
    private void refresh() {
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
        bowl.pull();
        bowl.setVisible(SampleFields.METER_TYPE, reading.meter().isEmpty());
        showMoistures();
        Choices.show(paper, List.of(Paper.A4, Paper.LETTER), Optional.of(model.paper()));
        List<Problem> due = reading.problems().stream()
                .filter(problem -> problem.kind() != Problem.Kind.NOT_YET)
                .toList();
        List<Problem> others = moisture.show(bowl.show(due));
        lines.show(others);
        showSettings(reading, due, others);
        masses.show(model.mix(), reading.sample(), reading.weighOut(), model.massUnit());
        water.show(
                reading.sample(),
                reading.meterType(),
                mix.batch().targetAirPercent(),
                mix.batch().wetSieved(),
                desk.units());
        weighOut.show(model.mix(), reading.sample(), reading.weighOut(), model.massUnit());
        todays.say(model.hasMoistureOfToday() ? texts.get("standing.moisture") : "");
        wetSieved.setVisible(mix.batch().wetSieved());
        runsOver.say(thirdRunsOver(reading.sample()));
        elsewhere.say(others.isEmpty() ? "" : texts.get("mix-problems"));
        note.setText(note(reading));
        told.say("");
    }

    /** Shows a field an aggregate, made anew for each mix. */
    private void showMoistures() {
        if (moistures != model.moistures()) {
            moistures = model.moistures();
            moisture = new ColumnForm(model, problemText).addAll(moistures);
            moisturePlace.removeAll();
            moisturePlace.add(moisture.panel());
            moisturePlace.revalidate();
        }
        moisture.pull();
    }

    /** Says what the settings are, and opens them where something is wrong or missing there that was not before. */
    private void showSettings(SampleReading reading, List<Problem> due, List<Problem> elsewhere) {
        settings.say(model.settings());
        List<Problem> inFold =
                due.stream().filter(problem -> !elsewhere.contains(problem)).toList();
        boolean isBowlMissing = reading.problems().stream().anyMatch(problem -> problem.kind() == Problem.Kind.NOT_YET);
        if (isBowlMissing || !inFold.isEmpty() && !inFold.equals(knownInFold)) {
            settings.open();
        }
        knownInFold = inFold;
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
}
