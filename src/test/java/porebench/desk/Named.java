package porebench.desk;

import java.awt.Component;
import java.awt.Container;
import java.util.Optional;

/** Finds components of a window by their names. */
public final class Named {
    private Named() {}

    /** Returns the first component of a kind with a name, however deep it lies. */
    public static <T extends Component> T in(Container window, Class<T> type, String name) {
        return search(window, type, name).orElseThrow(() -> new AssertionError("no " + name));
    }

    private static <T extends Component> Optional<T> search(Container in, Class<T> type, String name) {
        for (Component each : in.getComponents()) {
            if (type.isInstance(each) && name.equals(each.getName())) {
                return Optional.of(type.cast(each));
            }
            Optional<T> inside = each instanceof Container container ? search(container, type, name) : Optional.empty();
            if (inside.isPresent()) {
                return inside;
            }
        }
        return Optional.empty();
    }
}
