package porebench.desk.frame.rail;

import java.awt.Component;
import java.awt.Container;
import java.awt.FocusTraversalPolicy;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The order in which Tab goes through the strip on the left. It begins with the list of mixes and ends with what begins a new one:
 * when a part of the window that has the keyboard goes away, Swing hands it to the first part of the window, where no key may
 * begin anything.
 */
final class RailOrder extends FocusTraversalPolicy {
    private final List<Component> order;

    RailOrder(List<Component> order) {
        this.order = List.copyOf(order);
    }

    private @Nullable Component first(IntStream places) {
        return places.mapToObj(order::get)
                .filter(RailOrder::takesFocus)
                .findFirst()
                .orElse(null);
    }

    private static boolean takesFocus(Component one) {
        return one.isShowing() && one.isEnabled() && one.isFocusable();
    }

    @Override
    public @Nullable Component getComponentAfter(Container strip, Component one) {
        return first(IntStream.range(order.indexOf(one) + 1, order.size()));
    }

    @Override
    public @Nullable Component getComponentBefore(Container strip, Component one) {
        return first(backwards(order.indexOf(one)));
    }

    @Override
    public @Nullable Component getFirstComponent(Container strip) {
        return first(IntStream.range(0, order.size()));
    }

    @Override
    public @Nullable Component getLastComponent(Container strip) {
        return first(backwards(order.size()));
    }

    @Override
    public @Nullable Component getDefaultComponent(Container strip) {
        return getFirstComponent(strip);
    }

    private static IntStream backwards(int from) {
        return IntStream.iterate(from - 1, place -> place >= 0, place -> place - 1);
    }
}
