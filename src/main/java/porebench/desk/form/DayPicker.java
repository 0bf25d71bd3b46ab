package porebench.desk.form;

import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.InputMap;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPopupMenu;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;
import org.jspecify.annotations.Nullable;
import porebench.method.Texts;

/**
 * A month to choose a day from, which hangs from a field in which a day or a moment is typed.
 *
 * <p>It comes by Alt and Down, by F4, or by the small button in the field. The keyboard stays in the field: while the month is there
 * the arrow keys, Home, End, Page Up, Page Down, Enter and Escape are for it, and any letter closes it and is typed. Nothing of the
 * field changes until a day is taken; of a moment the time stays.
 */
public final class DayPicker {
    private static final String KEY = "porebench.day-picker";

    private final JTextField field;
    private final boolean isMoment;
    private final Supplier<LocalDate> today;
    private final Locale locale;
    private final Texts texts;
    private @Nullable JPopupMenu popup;
    private @Nullable MonthPanel panel;
    private MonthModel month;

    private DayPicker(JTextField field, boolean isMoment, Supplier<LocalDate> today, Locale locale) {
        this.field = field;
        this.isMoment = isMoment;
        this.today = today;
        this.locale = locale;
        this.texts = Texts.of("porebench.desk.form.form", locale);
        this.month = MonthModel.of(LocalDate.EPOCH, locale);
    }

    /** Lets a day be chosen for a field of a day. */
    public static void onDay(JTextField field, Supplier<LocalDate> today, Locale locale) {
        new DayPicker(field, false, today, locale).begin();
    }

    /** Lets the day of a moment be chosen for a field of a day and time. */
    public static void onMoment(JTextField field, Supplier<LocalDate> today, Locale locale) {
        new DayPicker(field, true, today, locale).begin();
    }

    private void begin() {
        JButton button = new JButton("\u25be");
        button.setName("pick");
        // Tab goes on from field to field; the keyboard has its own way to the month.
        button.setFocusable(false);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        button.setToolTipText(texts.get("month.open"));
        button.getAccessibleContext().setAccessibleName(texts.get("month.open"));
        button.addActionListener(event -> openOrClose());
        field.putClientProperty("JTextField.trailingComponent", button);
        field.putClientProperty(KEY, this);
        bind(field.getInputMap(), "open", KeyEvent.VK_DOWN, KeyEvent.ALT_DOWN_MASK, this::open);
        bind(field.getInputMap(), "open", KeyEvent.VK_F4, 0, this::open);
        Typing.listen(field, this::close);
    }

    private void bind(InputMap keys, String what, int key, int modifiers, Runnable act) {
        String name = KEY + "." + what;
        keys.put(KeyStroke.getKeyStroke(key, modifiers), name);
        field.getActionMap().put(name, Commands.of("", act));
    }

    /** Returns the picker of a field; empty where it has none. */
    static Optional<DayPicker> of(JComponent field) {
        return Optional.ofNullable((DayPicker) field.getClientProperty(KEY));
    }

    private void openOrClose() {
        if (isOpen()) {
            close();
        } else {
            field.requestFocusInWindow();
            open();
        }
    }

    boolean isOpen() {
        return popup != null;
    }

    private void open() {
        if (isOpen() || !field.isEditable() || !field.isEnabled() || !field.isShowing()) {
            return;
        }
        LocalDate now = today.get();
        month = MonthModel.of(typedDay().orElse(now), locale);
        MonthPanel shown = new MonthPanel(now, texts, this::take, months -> show(month.plusMonths(months)));
        JPopupMenu hanging = new JPopupMenu();
        hanging.setName("month.popup");
        // As the list of a box: it takes neither the keyboard nor the keys of menus.
        hanging.setFocusable(false);
        hanging.add(shown);
        popup = hanging;
        panel = shown;
        show(month);
        takeKeys();
        hanging.addPopupMenuListener(new PopupMenuListener() {
            @Override
            public void popupMenuWillBecomeVisible(PopupMenuEvent event) {
                // It is filled before.
            }

            @Override
            public void popupMenuWillBecomeInvisible(PopupMenuEvent event) {
                gone();
            }

            @Override
            public void popupMenuCanceled(PopupMenuEvent event) {
                // It becomes invisible as well.
            }
        });
        hanging.show(field, 0, field.getHeight());
    }

    private Optional<LocalDate> typedDay() {
        return isMoment
                ? Days.parseMoment(field.getText())
                        .map(LocalDateTime::toLocalDate)
                        .or(() -> Days.parse(field.getText()))
                : Days.parse(field.getText());
    }

    private void takeKeys() {
        InputMap keys = new InputMap();
        keys.setParent(field.getInputMap());
        field.setInputMap(JComponent.WHEN_FOCUSED, keys);
        bind(keys, "left", KeyEvent.VK_LEFT, 0, () -> show(month.plusDays(-1)));
        bind(keys, "right", KeyEvent.VK_RIGHT, 0, () -> show(month.plusDays(1)));
        bind(keys, "up", KeyEvent.VK_UP, 0, () -> show(month.plusDays(-MonthModel.WEEK)));
        bind(keys, "down", KeyEvent.VK_DOWN, 0, () -> show(month.plusDays(MonthModel.WEEK)));
        bind(keys, "home", KeyEvent.VK_HOME, 0, () -> show(month.firstOfWeek()));
        bind(keys, "end", KeyEvent.VK_END, 0, () -> show(month.lastOfWeek()));
        bind(keys, "before", KeyEvent.VK_PAGE_UP, 0, () -> show(month.plusMonths(-1)));
        bind(keys, "after", KeyEvent.VK_PAGE_DOWN, 0, () -> show(month.plusMonths(1)));
        bind(keys, "take", KeyEvent.VK_ENTER, 0, () -> take(month.marked()));
        bind(keys, "leave", KeyEvent.VK_ESCAPE, 0, this::close);
        bind(keys, "close", KeyEvent.VK_UP, KeyEvent.ALT_DOWN_MASK, this::close);
        bind(keys, "tab", KeyEvent.VK_TAB, 0, this::close);
    }

    private void show(MonthModel other) {
        month = other;
        if (panel != null) {
            panel.show(month);
        }
        field.getAccessibleContext().setAccessibleDescription(month.spoken());
    }

    private void take(LocalDate day) {
        String time = isMoment
                ? Days.parseMoment(field.getText())
                        .map(moment -> Days.show(day.atTime(moment.toLocalTime())))
                        .orElse(Days.show(day) + " ")
                : Days.show(day);
        close();
        field.setText(time);
        field.setCaretPosition(time.length());
        field.requestFocusInWindow();
    }

    private void close() {
        if (popup != null) {
            popup.setVisible(false);
        }
    }

    private void gone() {
        if (popup == null) {
            return;
        }
        popup = null;
        panel = null;
        InputMap own = field.getInputMap().getParent();
        if (own != null) {
            field.setInputMap(JComponent.WHEN_FOCUSED, own);
        }
        SpokenField.of(field).again();
    }
}
