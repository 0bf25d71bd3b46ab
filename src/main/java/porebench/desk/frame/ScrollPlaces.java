package porebench.desk.frame;

import java.awt.Component;
import java.awt.Container;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import porebench.desk.form.TallPanel;
import porebench.record.id.MixId;

/** How far down a page was read, for each mix: of another mix it begins at its top, and is found again where it was left. */
final class ScrollPlaces {
    private final JComponent page;
    private final Map<Optional<MixId>, Integer> places = new HashMap<>();
    private Optional<MixId> shown = Optional.empty();

    ScrollPlaces(JComponent page) {
        this.page = page;
    }

    /** Notes where the page was left, and brings it to where it was left with the mix that it shows now. */
    void turnTo(Optional<MixId> mix) {
        Optional<JScrollPane> scroll = find(page);
        if (mix.equals(shown) || scroll.isEmpty()) {
            return;
        }
        JScrollBar bar = scroll.get().getVerticalScrollBar();
        places.put(shown, bar.getValue());
        shown = mix;
        // Once the page is as high as what it shows now.
        SwingUtilities.invokeLater(() -> {
            if (shown.equals(mix)) {
                scroll.get().getViewport().getView().invalidate();
                scroll.get().validate();
                bar.setValue(places.getOrDefault(mix, 0));
            }
        });
    }

    private static Optional<JScrollPane> find(Container around) {
        for (Component each : around.getComponents()) {
            Optional<JScrollPane> found =
                    each instanceof JScrollPane scroll && scroll.getViewport().getView() instanceof TallPanel
                            ? Optional.of(scroll)
                            : each instanceof Container inner ? find(inner) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
