package porebench.desk.trial;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import porebench.desk.form.Choices;
import porebench.desk.form.Typing;
import porebench.method.trial.Withdrawal;
import porebench.quantity.MassUnit;
import porebench.quantity.TemperatureUnit;
import porebench.record.Meter;

/** The fields of the entry form, each bound to its text in the draft; Enter goes to the next one. */
final class EntryFields {
    private static final int COLUMNS = 10;

    private final EntryModel model;
    private final Runnable save;
    private final Map<TrialField, JComponent> all = new EnumMap<>(TrialField.class);
    private final List<String> meterIds = new ArrayList<>();
    private final JComboBox<String> meter = new JComboBox<>();
    private boolean showing;

    /**
     * Makes the fields.
     *
     * @param save saves the trial, after the last field and on Ctrl+Enter
     */
    EntryFields(EntryModel model, Runnable save, String leakWords) {
        this.model = model;
        this.save = save;
        for (TrialField field : TrialField.values()) {
            JComponent component = make(field, leakWords);
            component.setName(field.problemField());
            bindKeys(field, component);
            component.addFocusListener(new FocusAdapter() {
                @Override
                public void focusGained(FocusEvent event) {
                    model.focus(Optional.of(field));
                    if (component instanceof JTextField text) {
                        text.selectAll();
                    }
                }
            });
            all.put(field, component);
        }
    }

    JComponent of(TrialField field) {
        return Objects.requireNonNull(all.get(field));
    }

    private JComponent make(TrialField field, String leakWords) {
        return switch (field) {
            case METER -> meterBox();
            case MASS_UNIT ->
                Choices.ofUnits(
                        field.problemField(), Arrays.asList(MassUnit.values()), unit -> typed(field, unit.name()));
            case WATER_UNIT ->
                Choices.ofUnits(
                        field.problemField(),
                        Arrays.asList(TemperatureUnit.values()),
                        unit -> typed(field, unit.name()));
            case WITHDRAWN_UNIT ->
                Choices.of(
                        field.problemField(),
                        Arrays.asList(Withdrawal.Unit.values()),
                        UnitWords::of,
                        unit -> typed(field, unit.name()));
            case LEAK -> leakBox(leakWords);
            default -> textField(field);
        };
    }

    private JComboBox<String> meterBox() {
        // As narrow as the other fields; the list is as wide as the longest name.
        meter.setPrototypeDisplayValue("M");
        meter.addActionListener(event -> {
            int index = meter.getSelectedIndex();
            if (index >= 0 && index < meterIds.size()) {
                typed(TrialField.METER, meterIds.get(index));
            }
        });
        return meter;
    }

    private JCheckBox leakBox(String words) {
        int ampersand = words.indexOf('&');
        JCheckBox box = new JCheckBox(words.replaceFirst("&", ""));
        if (ampersand >= 0) {
            box.setMnemonic(Character.toUpperCase(words.charAt(ampersand + 1)));
            box.setDisplayedMnemonicIndex(ampersand);
        }
        box.addActionListener(event -> typed(TrialField.LEAK, box.isSelected() ? TrialDraft.LEAKED : ""));
        return box;
    }

    private JTextField textField(TrialField field) {
        JTextField text = new JTextField(COLUMNS);
        Typing.listen(text, () -> typed(field, text.getText()));
        return text;
    }

    private void typed(TrialField field, String text) {
        if (!showing) {
            model.type(field, text);
        }
    }

    private void bindKeys(TrialField field, JComponent component) {
        component.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "next field");
        component.getActionMap().put("next field", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                if (component instanceof JComboBox<?> box && box.isPopupVisible()) {
                    box.setPopupVisible(false);
                } else if (field == TrialField.REMARKS) {
                    save.run();
                } else {
                    component.transferFocus();
                }
            }
        });
    }

    /** Shows the draft as it is, leaving alone what is shown already so that the caret stays. */
    void show(List<Meter> meters, List<String> meterWords) {
        showing = true;
        List<String> ids = meters.stream().map(each -> each.id().text()).toList();
        if (!ids.equals(meterIds) || meterWords.size() != meter.getItemCount()) {
            meterIds.clear();
            meterIds.addAll(ids);
            meter.removeAllItems();
            meterWords.forEach(meter::addItem);
        }
        TrialDraft draft = model.draft();
        all.forEach((field, component) -> put(component, field, draft.text(field)));
        showing = false;
    }

    private void put(JComponent component, TrialField field, String text) {
        if (component instanceof JTextField typed) {
            if (!typed.getText().equals(text)) {
                typed.setText(text);
            }
        } else if (component instanceof JCheckBox box) {
            box.setSelected(text.equals(TrialDraft.LEAKED));
        } else if (component instanceof JComboBox<?> box) {
            box.setSelectedIndex(
                    switch (field) {
                        case METER -> meterIds.indexOf(text);
                        case MASS_UNIT -> MassUnit.valueOf(text).ordinal();
                        case WATER_UNIT -> TemperatureUnit.valueOf(text).ordinal();
                        case WITHDRAWN_UNIT -> Withdrawal.Unit.valueOf(text).ordinal();
                        default -> -1;
                    });
        }
    }
}
