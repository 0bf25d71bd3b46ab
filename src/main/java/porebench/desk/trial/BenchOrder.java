package porebench.desk.trial;

import java.awt.Component;
import java.util.Comparator;
import java.util.List;
import javax.swing.SortingFocusTraversalPolicy;

/** The order in which Tab and Enter go through the entry form: that of the bench, past what is hidden or switched off. */
final class BenchOrder extends SortingFocusTraversalPolicy {
    private final List<? extends Component> order;

    BenchOrder(List<? extends Component> order) {
        super(Comparator.comparingInt(order::indexOf));
        this.order = List.copyOf(order);
    }

    @Override
    protected boolean accept(Component component) {
        return order.contains(component) && component.isShowing() && component.isEnabled() && component.isFocusable();
    }
}
