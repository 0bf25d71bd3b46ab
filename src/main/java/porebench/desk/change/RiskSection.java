package porebench.desk.change;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.DeterminationSection;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.Settings;
import porebench.desk.form.Form;
import porebench.desk.form.OnView;
import porebench.desk.form.Typing;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.id.DeterminationId;

/** What an error of a mix's factor does to its loads: typed figures, one sentence, the curve. */
public final class RiskSection implements DeterminationSection {
    private static final int CURVE_HEIGHT = 280;
    private static final int COLUMNS = 8;

    private final RiskModel model;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    private final Form form;
    private final Map<RiskModel.Field, JTextField> fields = new EnumMap<>(RiskModel.Field.class);
    private final WrappedText sentence = new WrappedText("risk.sentence", "h4");
    private final PlotPanel curve;
    private boolean isStale = true;
    private boolean showing;

    /**
     * Makes the section.
     *
     * @param settings where the spread of the laboratory's loads is remembered
     */
    public RiskSection(DeskModel desk, Settings settings) {
        ChangeModel change = new ChangeModel(desk);
        model = new RiskModel(change, settings);
        Texts texts = change.texts();
        form = new Form(desk.tools().problemText());
        curve = new PlotPanel(
                desk.tools(),
                "risk",
                CURVE_HEIGHT,
                new PlotPanel.Words(
                        texts.get("section.curve"),
                        () -> change.pictureName("risk"),
                        change::subject,
                        desk::isTraining));
        panel.setName("risk");
        panel.setOpaque(false);
        panel.add(Form.heading(texts.get("section.risk"), "h2"));
        panel.add(new WrappedText("risk.about", "", texts.get("risk.about")), "wmin 0");
        for (RiskModel.Field field : RiskModel.Field.values()) {
            addField(field, texts);
        }
        panel.add(form.panel(), "wmin 0, wmax 460, gaptop 6");
        panel.add(sentence, "wmin 0, gaptop 4");
        panel.add(curve.component(), "wmin 0, gaptop 8");
        OnView.each(panel, () -> {
            if (isStale) {
                show();
            }
        });
        change.onChange(this::showSoon);
        model.onChange(this::showSoon);
        Looks.onOther(this::showSoon);
    }

    private void addField(RiskModel.Field field, Texts texts) {
        JTextField input = new JTextField(COLUMNS);
        fields.put(field, input);
        form.add(field.symbol(), texts.get("field." + field.symbol()), input, texts.get("unit.air"));
        input.setName("risk." + field.symbol());
        Typing.follow(input, typed -> {
            if (!showing) {
                model.type(field, typed);
                showWhatFollows();
            }
        });
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void show(Optional<DeterminationId> determination) {
        showSoon();
    }

    /** Shows it now when anybody can see it, else as soon as somebody can. */
    private void showSoon() {
        isStale = true;
        if (panel.isShowing()) {
            show();
        }
    }

    private void show() {
        isStale = false;
        showing = true;
        model.follow();
        fields.forEach((field, input) -> Typing.show(input, model.text(field)));
        showing = false;
        showWhatFollows();
    }

    private void showWhatFollows() {
        form.show(model.problems());
        sentence.say(model.sentence());
        model.curve().ifPresent(data -> curve.view().show(data, Looks.now()));
        curve.component().setVisible(model.curve().isPresent());
        panel.revalidate();
        panel.repaint();
    }
}
