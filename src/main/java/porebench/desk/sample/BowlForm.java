package porebench.desk.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.Row;
import porebench.desk.form.Typing;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.quantity.MassUnit;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;

/** The bowl, the number of trials and the unit of masses. */
final class BowlForm {
    private static final List<VolumeUnit> VOLUMES =
            List.of(VolumeUnit.LITRE, VolumeUnit.MILLILITRE, VolumeUnit.CUBIC_FOOT, VolumeUnit.CUBIC_INCH);
    private static final List<MassUnit> MASSES =
            List.of(MassUnit.GRAM, MassUnit.KILOGRAM, MassUnit.POUND, MassUnit.OUNCE);

    private final SampleModel model;
    private final Texts texts;
    private final Numbers numbers;
    private final Form form;
    private final JComboBox<Optional<Meter>> meter;
    private final JTextField bowl = new JTextField(12);
    private final JComboBox<VolumeUnit> bowlUnit;
    private final JComboBox<MeterType> meterType;
    private final Row meterTypeRow;
    private final JTextField trials = new JTextField(12);
    private final JTextField spare = new JTextField(12);
    private final JComboBox<MassUnit> massUnit;
    private List<Meter> shownMeters = List.of();
    private boolean filling;

    BowlForm(SampleModel model, Numbers numbers, ProblemText problemText) {
        this.model = model;
        this.texts = model.texts();
        this.numbers = numbers;
        this.form = new Form(problemText);
        List<Optional<Meter>> none = List.of(Optional.empty());
        meter = Choices.of("meter", none, this::say, chosen -> ifTyped(() -> model.chooseMeter(chosen.map(Meter::id))));
        bowlUnit = Choices.ofUnits("bowlUnit", VOLUMES, unit -> ifTyped(() -> model.chooseBowlUnit(unit)));
        meterType = Choices.of(
                "meterType",
                List.of(MeterType.A, MeterType.B),
                this::say,
                type -> ifTyped(() -> model.chooseMeterType(type)));
        massUnit = Choices.ofUnits("massUnit", MASSES, unit -> ifTyped(() -> model.chooseMassUnit(unit)));
        Typing.follow(bowl, text -> ifTyped(() -> model.typeBowl(text)));
        Typing.follow(trials, text -> ifTyped(() -> model.typeTrials(text)));
        Typing.follow(spare, text -> ifTyped(() -> model.typeSpare(text)));
        form.add("meter", texts.get("label.meter"), meter, "");
        form.add("bowl", texts.get("label.bowl"), bowl, bowlUnit);
        meterTypeRow = form.add("meterType", texts.get("label.meterType"), meterType, "");
        form.add("trials", texts.get("label.trials"), trials, "");
        form.add("spare", texts.get("label.spare"), spare, texts.get("unit.spare"));
        form.add("massUnit", texts.get("label.massUnit"), massUnit, "");
    }

    JPanel panel() {
        return form.panel();
    }

    private String say(Optional<Meter> chosen) {
        return chosen.map(known -> texts.get(
                        "meter.line",
                        known.id().text(),
                        known.type().name(),
                        numbers.show(known.bowl().number()) + " "
                                + known.bowl().unit().symbol()))
                .orElseGet(() -> texts.get("meter.none"));
    }

    private String say(MeterType type) {
        return texts.get(type == MeterType.A ? "type.a" : "type.b");
    }

    /** Hands on what the person did, but not what the program filled in. */
    private void ifTyped(Runnable step) {
        if (!filling) {
            step.run();
        }
    }

    /** Fills the fields from the draft; the bowl of a chosen meter is shown as the register has it. */
    void refresh() {
        filling = true;
        try {
            fillMeters();
            SampleDraft draft = model.draft();
            Optional<Meter> chosen = model.reading().flatMap(SampleReading::meter);
            meter.setSelectedItem(chosen);
            Typing.show(
                    bowl,
                    chosen.map(known -> numbers.show(known.bowl().number())).orElse(draft.bowl()));
            bowl.setEditable(chosen.isEmpty());
            bowlUnit.setSelectedItem(chosen.isPresent() ? chosen.get().bowl().unit() : draft.bowlUnit());
            bowlUnit.setEnabled(chosen.isEmpty());
            meterType.setSelectedItem(draft.meterType());
            meterTypeRow.setVisible(chosen.isEmpty());
            Typing.show(trials, draft.trials());
            Typing.show(spare, draft.spare());
            massUnit.setSelectedItem(draft.massUnit());
        } finally {
            filling = false;
        }
    }

    private void fillMeters() {
        List<Meter> meters = model.meters();
        if (!meters.equals(shownMeters)) {
            shownMeters = meters;
            List<Optional<Meter>> items = new ArrayList<>();
            items.add(Optional.empty());
            meters.forEach(known -> items.add(Optional.of(known)));
            meter.removeAllItems();
            items.forEach(meter::addItem);
        }
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
