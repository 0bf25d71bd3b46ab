package porebench.desk.manual;

import java.awt.Component;
import java.awt.Window;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JRootPane;
import javax.swing.RootPaneContainer;
import javax.swing.SwingUtilities;
import porebench.method.Problem;

/** The way from a component to the manual of its window, such as from a problem to what is said of it. */
public final class ManualLink {
    private static final String DOOR = "porebench.manual";

    private ManualLink() {}

    /** Lets what stands in a window, and in dialogs over it, open the manual. */
    public static void offer(JRootPane window, Consumer<ManualModel.Spot> door) {
        window.putClientProperty(DOOR, door);
    }

    /** Opens what the manual says of a problem; returns whether there is a manual to open. */
    public static boolean open(Component from, Problem problem) {
        Optional<Consumer<ManualModel.Spot>> door = door(from);
        door.ifPresent(opens -> opens.accept(new ManualModel.Spot("problems", problem.code())));
        return door.isPresent();
    }

    @SuppressWarnings("unchecked")
    private static Optional<Consumer<ManualModel.Spot>> door(Component from) {
        Window window = from instanceof Window itself ? itself : SwingUtilities.getWindowAncestor(from);
        for (; window != null; window = window.getOwner()) {
            if (window instanceof RootPaneContainer container
                    && container.getRootPane().getClientProperty(DOOR) instanceof Consumer<?> door) {
                return Optional.of((Consumer<ManualModel.Spot>) door);
            }
        }
        return Optional.empty();
    }
}
