package porebench.desk.sample;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.Typing;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.sample.Constituent;

/** Today's moisture of each stockpile, a field an aggregate, made anew for each mix. */
final class MoistureForm {
    private final JPanel place = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill]"));
    private final SampleModel model;
    private final Texts texts;
    private final Numbers numbers;
    private final ProblemText problemText;
    private final List<JTextField> fields = new ArrayList<>();
    private Form form;
    private List<Constituent> shown = List.of();
    private boolean filling;

    MoistureForm(SampleModel model, Numbers numbers, ProblemText problemText) {
        this.model = model;
        this.texts = model.texts();
        this.numbers = numbers;
        this.problemText = problemText;
        this.form = new Form(problemText);
    }

    JPanel panel() {
        return place;
    }

    void refresh() {
        List<Constituent> aggregates =
                model.mix().map(version -> version.value().aggregates()).orElse(List.of());
        if (!aggregates.equals(shown)) {
            shown = aggregates;
            make();
        }
        filling = true;
        try {
            for (int index = 0; index < fields.size(); index++) {
                Typing.show(fields.get(index), model.draft().moistures().get(index));
            }
        } finally {
            filling = false;
        }
    }

    private void make() {
        form = new Form(problemText);
        fields.clear();
        for (Constituent aggregate : shown) {
            int index = fields.size();
            JTextField field = new JTextField(12);
            field.putClientProperty("JTextField.placeholderText", designed(aggregate.moisturePercent()));
            Typing.follow(field, text -> {
                if (!filling) {
                    model.typeMoisture(index, text);
                }
            });
            String label = aggregate
                    .sourceId()
                    .map(source -> texts.get("moisture.label", aggregate.name(), source))
                    .orElse(aggregate.name());
            form.add("moisture." + index, label, field, texts.get("unit.moisture"));
            fields.add(field);
        }
        place.removeAll();
        place.add(form.panel());
        place.revalidate();
    }

    private String designed(Optional<BigDecimal> moisture) {
        return moisture.map(percent -> texts.get("moisture.designed", numbers.show(percent) + " %"))
                .orElseGet(() -> texts.get("moisture.designed.ssd"));
    }

    /**
     * Shows problems under their fields.
     *
     * @return those that belong to no field here
     */
    List<Problem> show(List<Problem> problems) {
        return form.show(problems);
    }
}
