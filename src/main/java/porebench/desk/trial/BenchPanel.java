package porebench.desk.trial;

import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import porebench.desk.NewerVersion;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.EnterOrder;
import porebench.desk.form.Form;
import porebench.desk.form.SteadyButton;
import porebench.desk.form.WrappedText;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.Trial;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;

/** The entry form with the targets beside its fields; fields of the other type of meter are hidden. */
final class BenchPanel {
    private static final Set<Column<Trial, ?>> TARGETED = Set.of(
            TrialColumns.METER, TrialColumns.FINE, TrialColumns.COARSE, TrialColumns.SOAK, TrialColumns.WITHDRAWN);

    private final TrialsModel model;
    private final BenchModel entry;
    private final Texts texts;
    private final ColumnForm form;
    private final Map<Column<?, ?>, JLabel> targets = new HashMap<>();
    private final JLabel title = Form.heading("", "h2");
    private final NewerVersion<Trial> newer;
    private final WrappedText newerText = new WrappedText("newer", "fieldWarning");
    private final SteadyButton save;
    private final SteadyButton clear;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]", "[]10[]8[]"));

    BenchPanel(TrialsModel model, TrialsActions actions) {
        this.model = model;
        this.entry = model.entry();
        this.texts = model.texts();
        this.form = new ColumnForm(entry, model.desk().tools().problemText());
        title.setName("entryTitle");
        newer = actions.newer();
        save = newer.button("save", Commands.of("", actions::save));
        clear = Commands.button("clear", Commands.of("", this::clear));
        panel.add(title);
        BenchFields.ALL.forEach(column -> form.add(column, beside(column)));
        BenchFields.ALL.forEach(column -> bind(column, actions));
        meterBox();
        form.panel().setOpaque(false);
        panel.add(form.panel(), "wmin 0");
        panel.add(buttons(), "wmin 0");
        // Below the buttons, so that nothing is moved that is being typed in or pressed.
        panel.add(newerText.keepingRoom(2), "wmin 0, " + WrappedText.ROOM_KEPT);
        panel.add(new WrappedText("keys", "quiet", texts.get("keys")), "wmin 0");
        panel.setFocusTraversalPolicyProvider(true);
        panel.setFocusTraversalPolicy(new BenchOrder(order()));
    }

    JComponent component() {
        return panel;
    }

    private JComponent[] beside(Column<Trial, ?> column) {
        boolean hasTarget = TARGETED.contains(column);
        if (!hasTarget && column != TrialColumns.LEAK) {
            return new JComponent[0];
        }
        JLabel words = Form.heading(hasTarget ? "" : texts.get("leak.voids"), "quiet");
        if (hasTarget) {
            words.setName(column.field() + ".target");
            targets.put(column, words);
        }
        return new JComponent[] {words};
    }

    /** As narrow as the other fields; the list is as wide as the longest name. */
    @SuppressWarnings("unchecked")
    private void meterBox() {
        ((JComboBox<String>) form.field(TrialColumns.METER.field())).setPrototypeDisplayValue("M");
    }

    /**
     * Enter goes to the next field, never into a box with meters or units or to the leak, where a number typed without looking
     * would be lost, and saves after the remarks. A field that is come to from another part of the window is selected; not one that another
     * window had interrupted, in which the next digit would take the place of those that stand there.
     */
    private void bind(Column<Trial, ?> column, TrialsActions actions) {
        JComponent field = form.field(column.field());
        Runnable next = column == TrialColumns.REMARKS ? actions::save : () -> goOn(field);
        EnterOrder.bind(field, next);
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                entry.focus(Optional.of(column));
                if (field instanceof JTextField text && isFromThisWindow(event)) {
                    text.selectAll();
                }
            }
        });
        form.unitBox(column).ifPresent(box -> EnterOrder.bind(box, next));
    }

    private static boolean isFromThisWindow(FocusEvent event) {
        Component from = event.getOppositeComponent();
        return from != null
                && SwingUtilities.getWindowAncestor(from) == SwingUtilities.getWindowAncestor(event.getComponent());
    }

    /** The next number typed is the first of the trial; the button that was pressed is grey by now. */
    private void clear() {
        entry.clear();
        begin();
    }

    private void goOn(JComponent field) {
        BenchOrder fields = new BenchOrder(fields());
        Component next = field;
        do {
            Component after = fields.getComponentAfter(panel, next);
            next = after == null ? fields.getFirstComponent(panel) : after;
        } while (next instanceof JComboBox<?> && next != field);
        Optional.ofNullable(next).ifPresent(Component::requestFocusInWindow);
    }

    private List<Component> fields() {
        return BenchFields.IN_ORDER_OF_KEYS.stream()
                .filter(column -> column != TrialColumns.LEAK)
                .<Component>map(column -> form.field(column.field()))
                .toList();
    }

    private JPanel buttons() {
        JPanel buttons = new JPanel(new MigLayout("insets 0", "[]8[]"));
        buttons.setOpaque(false);
        buttons.add(save);
        buttons.add(clear);
        return buttons;
    }

    private List<Component> order() {
        List<Component> order = new ArrayList<>();
        for (Column<Trial, ?> column : BenchFields.BENCH) {
            order.add(form.field(column.field()));
            if (column == TrialColumns.WITHDRAWN) {
                form.unitBox(column).ifPresent(order::add);
            }
        }
        order.addAll(List.of(save, clear));
        BenchFields.HEAD.forEach(column -> order.add(form.field(column.field())));
        List.of(TrialColumns.FINE, TrialColumns.WATER)
                .forEach(column -> form.unitBox(column).ifPresent(order::add));
        return order;
    }

    /** Shows the form as it is, with the problems under its fields; returns those that belong to none. */
    List<Problem> show() {
        boolean correcting = entry.base().isPresent();
        boolean open = entry.determination().isPresent();
        title.setText(entry.base()
                .map(trial ->
                        texts.get("entry.title-correct", trial.value().id().text()))
                .orElseGet(() -> texts.get("entry.title-new")));
        newerText.say(newer.words());
        form.pull();
        showTargets();
        for (Column<Trial, ?> column : BenchFields.ALL) {
            form.setVisible(column, TrialColumns.isAsked(column, entry.type()));
            form.field(column.field()).setEnabled(open && !(correcting && column == TrialColumns.ID));
            form.unitBox(column).ifPresent(box -> box.setEnabled(open));
        }
        Commands.say(save, newer.act(texts.get(correcting ? "action.save-correction" : "action.save")));
        save.setEnabled(open && (!correcting || entry.history().isChanged()));
        clear.setText(texts.get(correcting ? "action.cancel" : "action.clear"));
        clear.setEnabled(correcting || entry.history().isChanged());
        return form.show(entry.shown());
    }

    private String bowl(Typed<Volume> bowl) {
        return texts.get(
                "target.bowl",
                model.desk().tools().numbers().show(bowl, model.desk().units().bowlVolume(), 4),
                model.desk().units().bowlVolume().symbol());
    }

    private void showTargets() {
        Optional<CorrectionSample> sample = entry.target();
        String unit = entry.massUnit().symbol();
        target(
                TrialColumns.METER,
                entry.meters().isEmpty()
                        ? Optional.of(texts.get("meter.none"))
                        : entry.bowl().map(this::bowl));
        target(TrialColumns.FINE, sample.map(s -> texts.get("target.mass", mass(s, true), unit)));
        target(TrialColumns.COARSE, sample.map(s -> texts.get("target.mass", mass(s, false), unit)));
        target(
                TrialColumns.SOAK,
                Optional.of(entry.soakTarget()
                        .map(minutes -> texts.get("target.soak", minutes))
                        .orElseGet(() -> texts.get("trial.soak.minutes"))));
        target(
                TrialColumns.WITHDRAWN,
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

    private void target(Column<?, ?> field, Optional<String> words) {
        Optional.ofNullable(targets.get(field)).ifPresent(label -> label.setText(words.orElse("")));
    }

    /** Puts the caret where a trial begins: into the first number that is wanting, or to the meter while none is chosen. */
    void begin() {
        List<JTextField> texts = BenchFields.BENCH.stream()
                .filter(column -> TrialColumns.isAsked(column, entry.type()))
                .map(column -> form.field(column.field()))
                .filter(JTextField.class::isInstance)
                .map(JTextField.class::cast)
                .toList();
        JComponent first = texts.stream()
                .filter(field -> field.getText().isBlank())
                .findFirst()
                .orElse(texts.get(0));
        JComponent place = entry.meter().isEmpty() ? form.field(TrialColumns.METER.field()) : first;
        place.requestFocusInWindow();
    }

    /** Puts the caret into the first field with a problem that forbids keeping. */
    void goTo(List<Problem> errors) {
        BenchFields.IN_ORDER_OF_KEYS.stream()
                .map(Column::field)
                .filter(field ->
                        errors.stream().anyMatch(problem -> problem.field().equals(field)))
                .findFirst()
                .ifPresent(field -> form.field(field).requestFocusInWindow());
    }
}
