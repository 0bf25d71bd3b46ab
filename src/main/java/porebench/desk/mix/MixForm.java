package porebench.desk.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.desk.form.Row;
import porebench.desk.form.Typing;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Profile;
import porebench.method.Texts;
import porebench.quantity.DensityUnit;
import porebench.quantity.VolumeUnit;

/** The fields of a mix design outside its table. */
final class MixForm {
    private static final List<VolumeUnit> VOLUMES =
            List.of(VolumeUnit.CUBIC_METRE, VolumeUnit.LITRE, VolumeUnit.CUBIC_FOOT, VolumeUnit.CUBIC_YARD);

    private final MixModel model;
    private final Texts texts;
    private final Form form;
    private final JTextField id;
    private final JTextField airTolerance;
    private final JComboBox<Profile> profile;
    private final Row volumeRow;
    private final Row densityRow;
    private final List<Runnable> fillers = new ArrayList<>();
    private List<Profile> shownProfiles = List.of();
    private boolean filling;

    MixForm(MixModel model, ProblemText problemText) {
        this.model = model;
        this.texts = model.texts();
        this.form = new Form(problemText);
        id = text(MixField.ID);
        form.add("id", texts.get("label.id"), id, "");
        form.add("title", texts.get("label.title"), text(MixField.TITLE), "");
        profile = Choices.of(
                "profile",
                model.profiles(),
                Profile::title,
                chosen -> ifTyped(() -> model.steps().chooseProfile(chosen.id())));
        form.add("profile", texts.get("label.profile"), profile, "");
        JComboBox<VolumeFrom> from = choice(
                Choices.of(
                        "volumeFrom",
                        List.of(VolumeFrom.values()),
                        value -> texts.get(value.key()),
                        chosen -> ifTyped(() -> model.steps().choose(chosen))),
                () -> model.draft().volumeFrom());
        form.add("volumeFrom", texts.get("label.volumeFrom"), from, "");
        volumeRow = form.add(
                "batchVolume",
                texts.get("label.batchVolume"),
                text(MixField.BATCH_VOLUME),
                choice(
                        Choices.ofUnits(
                                "batchVolumeUnit",
                                VOLUMES,
                                unit -> ifTyped(() -> model.steps().choose(unit))),
                        () -> model.draft().volumeUnit()));
        densityRow = form.add(
                "density",
                texts.get("label.density"),
                text(MixField.DENSITY),
                choice(
                        Choices.ofUnits(
                                "densityUnit",
                                List.of(DensityUnit.values()),
                                unit -> ifTyped(() -> model.steps().choose(unit))),
                        () -> model.draft().densityUnit()));
        form.add("targetAir", texts.get("label.targetAir"), text(MixField.TARGET_AIR), texts.get("unit.percent-air"));
        airTolerance = text(MixField.AIR_TOLERANCE);
        form.add("airTolerance", texts.get("label.airTolerance"), airTolerance, texts.get("unit.percent-air"));
        form.add("soakMinutes", texts.get("label.soakMinutes"), text(MixField.SOAK_MINUTES), texts.get("unit.minutes"));
        form.add("wetSieved", texts.get("label.wetSieved"), wetSieved(), "");
        form.add("remarks", texts.get("label.remarks"), text(MixField.REMARKS), "");
    }

    void focusFirst() {
        id.requestFocusInWindow();
    }

    JPanel panel() {
        return form.panel();
    }

    private JTextField text(MixField field) {
        JTextField typed = new JTextField(18);
        Typing.follow(typed, text -> ifTyped(() -> model.steps().type(field, text)));
        fillers.add(() -> Typing.show(typed, model.draft().text(field)));
        return typed;
    }

    private <T> JComboBox<T> choice(JComboBox<T> box, Supplier<T> shown) {
        fillers.add(() -> box.setSelectedItem(shown.get()));
        return box;
    }

    private JCheckBox wetSieved() {
        JCheckBox box = new JCheckBox(texts.get("wetSieved.box"));
        box.addActionListener(event -> ifTyped(() -> model.steps().chooseWetSieved(box.isSelected())));
        fillers.add(() -> box.setSelected(model.draft().wetSieved()));
        return box;
    }

    /** Hands on what the person did, but not what the program filled in. */
    private void ifTyped(Runnable step) {
        if (!filling) {
            step.run();
        }
    }

    /** Fills the fields from the draft. */
    void refresh() {
        filling = true;
        try {
            fillers.forEach(Runnable::run);
            fillProfile();
        } finally {
            filling = false;
        }
        id.setEditable(model.base().isEmpty());
        volumeRow.setVisible(model.draft().volumeFrom() == VolumeFrom.STATED);
        densityRow.setVisible(model.draft().volumeFrom() == VolumeFrom.DENSITY);
    }

    private void fillProfile() {
        List<Profile> profiles = model.profiles();
        if (!profiles.equals(shownProfiles)) {
            shownProfiles = profiles;
            profile.removeAllItems();
            profiles.forEach(profile::addItem);
        }
        profiles.stream()
                .filter(each -> each.id().equals(model.draft().profileId()))
                .findFirst()
                .ifPresent(chosen -> {
                    profile.setSelectedItem(chosen);
                    airTolerance.putClientProperty(
                            "JTextField.placeholderText",
                            texts.get(
                                    "placeholder.airTolerance",
                                    chosen.figure(FigureName.AIR_TOLERANCE).value(),
                                    chosen.title()));
                });
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
