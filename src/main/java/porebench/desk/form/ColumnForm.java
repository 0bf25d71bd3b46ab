package porebench.desk.form;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.record.column.CellShape;
import porebench.record.column.Column;

/** The fields of one record, one a column, linked to its draft. */
public final class ColumnForm {
    private static final int WIDTH = 10;

    private final ColumnModel model;
    private final Form form;
    private final Map<String, JComponent> fields = new HashMap<>();
    private final EnterOrder order = new EnterOrder();
    private final Map<String, JComponent> unitBoxes = new HashMap<>();
    private final Set<String> unitsShown = new HashSet<>();
    private final List<Runnable> pulls = new ArrayList<>();
    private boolean pulling;
    private Optional<Supplier<LocalDate>> calendar = Optional.empty();

    public ColumnForm(ColumnModel model, ProblemText problemText) {
        this.model = model;
        this.form = new Form(problemText);
    }

    /** Says what day it is, from which a day is chosen in the fields that are added from now on. */
    public ColumnForm on(Supplier<LocalDate> today) {
        calendar = Optional.of(today);
        return this;
    }

    /** Adds the fields of some columns. */
    public ColumnForm addAll(List<? extends Column<?, ?>> columns) {
        columns.forEach(this::add);
        return this;
    }

    /**
     * Adds the field of a column.
     *
     * @param besides what stands behind the box of its units, or in the place of its unit
     */
    public void add(Column<?, ?> column, JComponent... besides) {
        JComponent field = field(column);
        fields.put(column.field(), field);
        JComponent unit = unit(column);
        if (besides.length > 0) {
            JPanel all = new JPanel(new MigLayout("insets 0, gap 6, hidemode 3"));
            all.setOpaque(false);
            if (!model.units(column).isEmpty()) {
                all.add(unit);
            }
            for (JComponent beside : besides) {
                all.add(beside);
            }
            unit = all;
        }
        form.add(column.field(), model.label(column), field, unit);
    }

    /** Makes the field of a column that stands outside the rows, and so without its problems. */
    @SuppressWarnings("unchecked") // Who asks knows what the field of its column is.
    public <F extends JComponent> F alone(Column<?, ?> column) {
        JComponent field = field(column);
        field.setName(column.field());
        fields.put(column.field(), field);
        return (F) field;
    }

    /** Makes the buttons, one a choice, of which one of a column's choices is pressed; they stand outside the rows. */
    public List<JRadioButton> radios(Column<?, ?> column) {
        ButtonGroup group = new ButtonGroup();
        return model.choices(column).stream()
                .map(symbol -> radio(column, symbol, group))
                .toList();
    }

    private JRadioButton radio(Column<?, ?> column, String symbol, ButtonGroup group) {
        JRadioButton button = new JRadioButton();
        button.setName(column.field() + "." + symbol);
        Commands.say(button, model.choiceWords(column, symbol));
        button.addActionListener(event -> model.type(column, symbol));
        group.add(button);
        pulls.add(() -> {
            if (symbol.equals(model.shown(column))) {
                button.setSelected(true);
            }
        });
        return button;
    }

    private JComponent field(Column<?, ?> column) {
        JComponent field =
                column.type().isYesNo() ? tick(column) : model.isChosen(column) ? choices(column) : text(column);
        order.add(field);
        return field;
    }

    private JTextField text(Column<?, ?> column) {
        JTextField input = new JTextField(WIDTH);
        Typing.listen(input, () -> byPerson(() -> model.type(column, input.getText())));
        input.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) {
                    model.leave(column);
                }
            }
        });
        calendar.or(() -> model.today().map(day -> () -> model.today().orElse(day)))
                .ifPresent(today -> pick(column, input, today));
        pulls.add(() -> {
            if (!input.getText().equals(model.shown(column))) {
                input.setText(model.shown(column));
            }
            input.setEditable(!model.isFixed(column));
            input.putClientProperty("JTextField.placeholderText", model.hint(column));
            SpokenField.of(input).ofHint(model.hint(column));
        });
        SpokenField.of(input).ofRange(SpokenField.range(column, model.texts().locale()));
        return input;
    }

    /** Hangs a month from the field of a day or of a moment. */
    private void pick(Column<?, ?> column, JTextField input, Supplier<LocalDate> today) {
        CellShape.Kind kind = CellShape.of(column).kind();
        if (kind == CellShape.Kind.DAY) {
            DayPicker.onDay(input, today, model.texts().locale());
        } else if (kind == CellShape.Kind.MOMENT) {
            DayPicker.onMoment(input, today, model.texts().locale());
        }
    }

    private JComboBox<String> choices(Column<?, ?> column) {
        JComboBox<String> box = Choices.of(
                column.field(),
                model.choices(column),
                symbol -> model.choiceWords(column, symbol),
                symbol -> model.type(column, symbol));
        pulls.add(() -> {
            Choices.show(box, model.choices(column), Optional.of(model.shown(column)));
            box.setEnabled(!model.isFixed(column));
        });
        return box;
    }

    private JCheckBox tick(Column<?, ?> column) {
        JCheckBox box = new JCheckBox();
        Commands.say(box, model.tickWords(column));
        box.addActionListener(event -> model.tick(column, box.isSelected()));
        pulls.add(() -> box.setSelected(model.draft().isYes(column)));
        return box;
    }

    private JComponent unit(Column<?, ?> column) {
        List<String> units = model.units(column);
        if (!units.isEmpty() && unitsShown.add(column.unitField())) {
            JComboBox<String> box =
                    Choices.of(column.unitField(), units, model::unitWords, symbol -> model.chooseUnit(column, symbol));
            box.getAccessibleContext().setAccessibleName(model.unitName(column));
            JComponent field = Objects.requireNonNull(fields.get(column.field()));
            pulls.add(() -> {
                SpokenField.of(field).ofUnit(model.unitWords(model.shownUnit(column)));
                Choices.show(box, units, Optional.of(model.shownUnit(column)));
                box.setEnabled(!model.isFixed(column));
            });
            unitBoxes.put(column.field(), box);
            order.addBeside(box, field);
            return box;
        }
        JLabel words = new JLabel();
        pulls.add(() -> {
            words.setText(units.isEmpty() ? model.beside(column, model.draft()) : "");
            SpokenField.of(Objects.requireNonNull(fields.get(column.field()))).ofUnit(words.getText());
        });
        return words;
    }

    /** Hands on what a person did, but not what was pulled. */
    private void byPerson(Runnable done) {
        if (!pulling) {
            done.run();
        }
    }

    /** Lets Enter pass by a field that says only in which unit something is shown, but not the first one. */
    public ColumnForm passingBy(Column<?, ?> column) {
        order.passBy(field(column.field()));
        return this;
    }

    /** Says where Enter goes on from the last field, where the next thing on the page is not it. */
    public ColumnForm then(Runnable next) {
        order.then(next);
        return this;
    }

    /** Returns the panel with the rows. */
    public JPanel panel() {
        return form.panel();
    }

    /** Returns the field of a column, by its name. */
    public JComponent field(String name) {
        return Objects.requireNonNull(fields.get(name), name);
    }

    /** Returns the box of the units beside a column's number; empty where none stands there. */
    public Optional<JComponent> unitBox(Column<?, ?> column) {
        return Optional.ofNullable(unitBoxes.get(column.field()));
    }

    /** Shows or hides the row of a column. */
    public void setVisible(Column<?, ?> column, boolean shown) {
        form.setVisible(column.field(), shown);
    }

    /** Shows the draft in the fields; the caret stays where the text is there already. */
    public void pull() {
        pulling = true;
        try {
            pulls.forEach(Runnable::run);
        } finally {
            pulling = false;
        }
    }

    /**
     * Shows each problem under its field.
     *
     * @return the problems whose field is not in this form
     */
    public List<Problem> show(List<Problem> problems) {
        return form.show(problems);
    }
}
