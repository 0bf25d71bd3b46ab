package porebench.desk.form;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import porebench.quantity.Unit;

/** Boxes to choose one of some values from, each shown by its words; they tell of what a person chose only. */
public final class Choices {
    private static final String IS_FILLED = "porebench.isFilled";

    private Choices() {}

    /**
     * Makes a box.
     *
     * @param name the component's name
     * @param values what there is to choose from
     * @param words how a value is said
     * @param chosen takes what a person chose
     */
    public static <T> JComboBox<T> of(
            String name, List<? extends T> values, Function<T, String> words, Consumer<T> chosen) {
        JComboBox<T> box = new JComboBox<>();
        values.forEach(box::addItem);
        box.setName(name);
        SpokenChoices.follow(box);
        box.setRenderer(renderer(box, words));
        box.setKeySelectionManager((letter, offered) -> next(box, letter, words));
        box.addActionListener(event -> {
            int index = box.getSelectedIndex();
            if (index >= 0 && box.getClientProperty(IS_FILLED) == null) {
                chosen.accept(box.getItemAt(index));
            }
        });
        return box;
    }

    /** Returns where the next value stands whose words begin with a letter, seen from the one chosen; -1 for none. */
    private static <T> int next(JComboBox<T> box, char letter, Function<T, String> words) {
        int count = box.getItemCount();
        return IntStream.rangeClosed(1, count)
                .map(step -> (Math.max(box.getSelectedIndex(), -1) + step) % count)
                .filter(at -> words.apply(box.getItemAt(at)).regionMatches(true, 0, String.valueOf(letter), 0, 1))
                .findFirst()
                .orElse(-1);
    }

    /**
     * Offers some values in a box and shows which is chosen; a list that is the same stays open.
     *
     * @param chosen what is chosen; none where it is not among the values
     */
    public static <T> void show(JComboBox<T> box, List<? extends T> values, Optional<T> chosen) {
        box.putClientProperty(IS_FILLED, true);
        offer(box, values);
        box.setSelectedIndex(chosen.map(values::indexOf).orElse(-1));
        box.putClientProperty(IS_FILLED, null);
    }

    /** Offers some values in place of those before; a box that offers them already is left alone. */
    public static <T> void offer(JComboBox<T> box, List<? extends T> values) {
        List<T> offered =
                IntStream.range(0, box.getItemCount()).mapToObj(box::getItemAt).toList();
        if (!offered.equals(values)) {
            box.removeAllItems();
            values.forEach(box::addItem);
        }
    }

    /** Makes a box of units, shown by their symbols. */
    public static <U extends Unit<?>> JComboBox<U> ofUnits(String name, List<U> units, Consumer<U> chosen) {
        return of(name, units, Unit::symbol, chosen);
    }

    private static <T> DefaultListCellRenderer renderer(JComboBox<T> box, Function<T, String> words) {
        return new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean isSelected, boolean hasFocus) {
                String said = said(index < 0 ? closed(value) : index);
                return super.getListCellRendererComponent(list, said, index, isSelected, hasFocus);
            }

            /** Returns what the closed box says: what is chosen, or the value by which it is made wide enough. */
            private int closed(Object value) {
                return value != null && value == box.getPrototypeDisplayValue()
                        ? IntStream.range(0, box.getItemCount())
                                .filter(at -> value == box.getItemAt(at))
                                .findFirst()
                                .orElse(box.getSelectedIndex())
                        : box.getSelectedIndex();
            }

            private String said(int index) {
                return index >= 0 && index < box.getItemCount() ? words.apply(box.getItemAt(index)) : " ";
            }
        };
    }
}
