package porebench.desk.trial;

import java.awt.Component;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import porebench.desk.form.Form;
import porebench.desk.form.Row;
import porebench.desk.form.WrappedText;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;

/** The entry form with the targets beside its fields; fields of the other type of meter are hidden. */
final class EntryPanel {
    private final TrialsModel model;
    private final EntryModel entry;
    private final Texts texts;
    private final EntryFields fields;
    private final Form form;
    private final Map<TrialField, Row> rows = new EnumMap<>(TrialField.class);
    private final Map<TrialField, JLabel> targets = new EnumMap<>(TrialField.class);
    private final JLabel title = new JLabel();
    private final JButton save = new JButton();
    private final JButton clear = new JButton();
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]", "[]10[]8[]"));

    EntryPanel(TrialsModel model, TrialsActions actions) {
        this.model = model;
        this.entry = model.entry();
        this.texts = model.texts();
        this.fields = new EntryFields(entry, actions::save, texts.get("check.leak"));
        this.form = new Form(model.desk().tools().problemText());
        title.putClientProperty("FlatLaf.styleClass", "h2");
        title.setName("entryTitle");
        panel.add(title);
        addRows();
        form.panel().setOpaque(false);
        panel.add(form.panel(), "wmin 0");
        panel.add(buttons(actions), "wmin 0");
        WrappedText keys = new WrappedText("keys", "quiet");
        keys.setText(texts.get("keys"));
        panel.add(keys, "wmin 0");
        panel.setFocusTraversalPolicyProvider(true);
        panel.setFocusTraversalPolicy(new BenchOrder(order()));
    }

    JComponent component() {
        return panel;
    }

    private void addRows() {
        add(TrialField.ID, "label.trialid", new JLabel());
        add(TrialField.TESTED_AT, "label.tested_at", new JLabel());
        add(TrialField.OPERATOR, "label.operator", new JLabel());
        add(TrialField.METER, "label.meter", beside(TrialField.METER, null));
        add(TrialField.ELEVATION, "label.elevation", new JLabel(texts.get("unit.metres")));
        add(TrialField.FINE, "label.fine", beside(TrialField.FINE, fields.of(TrialField.MASS_UNIT)));
        add(TrialField.COARSE, "label.coarse", beside(TrialField.COARSE, null));
        add(TrialField.SOAK, "label.soak", beside(TrialField.SOAK, null));
        add(TrialField.WATER, "label.water", fields.of(TrialField.WATER_UNIT));
        add(
                TrialField.WITHDRAWN,
                "label.withdrawn",
                beside(TrialField.WITHDRAWN, fields.of(TrialField.WITHDRAWN_UNIT)));
        add(TrialField.GAUGE, "label.gauge", new JLabel(texts.get("unit.percent-air")));
        add(TrialField.H1, "label.h1", new JLabel(texts.get("unit.percent-air")));
        add(TrialField.H2, "label.h2", new JLabel(texts.get("unit.percent-air")));
        JLabel voids = new JLabel(texts.get("leak.voids"));
        voids.putClientProperty("FlatLaf.styleClass", "quiet");
        add(TrialField.LEAK, "label.leak", voids);
        add(TrialField.REMARKS, "label.remarks", new JLabel());
    }

    private void add(TrialField field, String key, JComponent unit) {
        rows.put(field, form.add(field.problemField(), texts.get(key), fields.of(field), unit));
    }

    private JPanel beside(TrialField field, @Nullable JComponent unit) {
        JPanel both = new JPanel(new MigLayout("insets 0, hidemode 3", "[]6[]"));
        both.setOpaque(false);
        if (unit != null) {
            both.add(unit);
        }
        JLabel target = new JLabel();
        target.setName(field.problemField() + ".target");
        target.putClientProperty("FlatLaf.styleClass", "quiet");
        targets.put(field, target);
        both.add(target);
        return both;
    }

    private JPanel buttons(TrialsActions actions) {
        JPanel buttons = new JPanel(new MigLayout("insets 0", "[]8[]"));
        buttons.setOpaque(false);
        save.setName("save");
        save.addActionListener(event -> actions.save());
        clear.setName("clear");
        clear.addActionListener(event -> entry.startNew());
        buttons.add(save);
        buttons.add(clear);
        return buttons;
    }

    private List<Component> order() {
        List<Component> order = new ArrayList<>();
        for (TrialField field : TrialField.values()) {
            order.add(fields.of(field));
            if (field == TrialField.REMARKS) {
                order.add(save);
                order.add(clear);
            }
        }
        return order;
    }

    /** Shows the form as it is, with the problems under its fields; returns those that belong to none. */
    List<Problem> show() {
        boolean correcting = entry.correcting().isPresent();
        boolean open = entry.determination().isPresent();
        title.setText(entry.correcting()
                .map(trial ->
                        texts.get("entry.title-correct", trial.value().id().text()))
                .orElseGet(() -> texts.get("entry.title-new")));
        fields.show(entry.meters(), entry.meters().stream().map(this::words).toList());
        boolean typeA = entry.type() == MeterType.A;
        visible(TrialField.WITHDRAWN, !typeA);
        visible(TrialField.GAUGE, !typeA);
        visible(TrialField.ELEVATION, typeA);
        visible(TrialField.H1, typeA);
        visible(TrialField.H2, typeA);
        showTargets();
        for (TrialField field : TrialField.values()) {
            fields.of(field).setEnabled(open && !(correcting && field == TrialField.ID));
        }
        save.setText(texts.get(correcting ? "action.save-correction" : "action.save"));
        save.setEnabled(open && (!correcting || entry.history().isChanged()));
        clear.setText(texts.get(correcting ? "action.cancel" : "action.clear"));
        clear.setEnabled(correcting || entry.history().isChanged());
        return form.show(entry.shown());
    }

    private void visible(TrialField field, boolean visible) {
        Optional.ofNullable(rows.get(field)).ifPresent(row -> row.setVisible(visible));
    }

    private String words(Meter meter) {
        return texts.get("meter.item", meter.id().text(), meter.type().name());
    }

    private String bowl(Typed<Volume> bowl) {
        return texts.get(
                "target.bowl",
                model.desk().tools().numbers().show(bowl.number()),
                bowl.unit().symbol());
    }

    private void showTargets() {
        Optional<CorrectionSample> sample = entry.target();
        String unit = entry.massUnit().symbol();
        target(
                TrialField.METER,
                entry.meters().isEmpty()
                        ? Optional.of(texts.get("meter.none"))
                        : entry.bowl().map(this::bowl));
        target(TrialField.FINE, sample.map(s -> texts.get("target.mass", mass(s, true), unit)));
        target(TrialField.COARSE, sample.map(s -> texts.get("target.mass", mass(s, false), unit)));
        target(
                TrialField.SOAK,
                Optional.of(entry.soakTarget()
                        .map(minutes -> texts.get("target.soak", minutes))
                        .orElseGet(() -> texts.get("unit.minutes"))));
        target(
                TrialField.WITHDRAWN,
                sample.map(s -> texts.get(
                        "target.withdrawn",
                        model.desk().tools().numbers().show(s.withdrawal().in(VolumeUnit.MILLILITRE), 0))));
    }

    private String mass(CorrectionSample sample, boolean fine) {
        return Masses.show(
                fine ? sample.fine() : sample.coarse(),
                entry.massUnit(),
                model.desk().tools().numbers());
    }

    private void target(TrialField field, Optional<String> words) {
        Optional.ofNullable(targets.get(field)).ifPresent(label -> label.setText(words.orElse("")));
    }

    /** Puts the caret where a new trial begins. */
    void begin() {
        fields.of(TrialField.METER).requestFocusInWindow();
    }

    /** Puts the caret into the first field with a problem that forbids keeping. */
    void goTo(List<Problem> errors) {
        for (TrialField field : TrialField.values()) {
            if (errors.stream().anyMatch(problem -> problem.field().equals(field.problemField()))) {
                fields.of(field).requestFocusInWindow();
                return;
            }
        }
    }
}
