package porebench.desk.form;

import java.awt.Component;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import porebench.quantity.Unit;

/** Boxes to choose one of some values from, each shown by its words. */
public final class Choices {
    private Choices() {}

    /**
     * Makes a box.
     *
     * @param name the component's name
     * @param values what there is to choose from
     * @param words how a value is said
     * @param chosen takes what was chosen, by the person or by the program
     */
    public static <T> JComboBox<T> of(
            String name, List<? extends T> values, Function<T, String> words, Consumer<T> chosen) {
        JComboBox<T> box = new JComboBox<>();
        values.forEach(box::addItem);
        box.setName(name);
        box.setRenderer(renderer(box, words));
        box.addActionListener(event -> {
            int index = box.getSelectedIndex();
            if (index >= 0) {
                chosen.accept(box.getItemAt(index));
            }
        });
        return box;
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
                String said = said(index < 0 ? box.getSelectedIndex() : index);
                return super.getListCellRendererComponent(list, said, index, isSelected, hasFocus);
            }

            private String said(int index) {
                return index >= 0 && index < box.getItemCount() ? words.apply(box.getItemAt(index)) : " ";
            }
        };
    }
}
