package porebench.desk.trial;

import java.awt.Component;
import java.awt.Container;
import java.awt.FocusTraversalPolicy;
import java.util.List;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** The order in which Tab and Enter go through the entry form: that of the bench, past what is hidden or switched off. */
final class BenchOrder extends FocusTraversalPolicy {
    private final List<Component> order;

    BenchOrder(List<Component> order) {
        this.order = List.copyOf(order);
    }

    private @Nullable Component from(int index, int step) {
        for (int i = index; i >= 0 && i < order.size(); i += step) {
            Component component = order.get(i);
            if (component.isShowing() && component.isEnabled() && component.isFocusable()) {
                return component;
            }
        }
        return null;
    }

    private int indexOf(Component component) {
        for (int i = 0; i < order.size(); i++) {
            if (order.get(i) == component || SwingUtilities.isDescendingFrom(component, order.get(i))) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public @Nullable Component getComponentAfter(Container root, Component component) {
        int index = indexOf(component);
        return index < 0 ? getFirstComponent(root) : from(index + 1, 1);
    }

    @Override
    public @Nullable Component getComponentBefore(Container root, Component component) {
        int index = indexOf(component);
        return index < 0 ? getLastComponent(root) : from(index - 1, -1);
    }

    @Override
    public @Nullable Component getFirstComponent(Container root) {
        return from(0, 1);
    }

    @Override
    public @Nullable Component getLastComponent(Container root) {
        return from(order.size() - 1, -1);
    }

    @Override
    public @Nullable Component getDefaultComponent(Container root) {
        return getFirstComponent(root);
    }
}
