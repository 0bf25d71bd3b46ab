package porebench.desk.frame;

import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Container;
import java.util.Optional;
import javax.swing.LayoutFocusTraversalPolicy;
import javax.swing.SwingUtilities;
import porebench.desk.Focusing;

/**
 * The way of the keyboard through the window. What had the keyboard and is hidden or switched off hands it to the page on view,
 * not to whatever comes first in the window.
 */
final class FocusWay extends LayoutFocusTraversalPolicy {
    private static final long serialVersionUID = 1L;

    private final transient Container pages;

    /**
     * Makes the way.
     *
     * @param pages holds the page on view
     */
    FocusWay(Container pages) {
        this.pages = pages;
        pages.setFocusable(true);
    }

    @Override
    public Component getComponentAfter(Container root, Component from) {
        boolean isGone = !from.isShowing() || !from.isEnabled();
        boolean isPage = isGone && from.getParent() != null && from.getParent().getLayout() instanceof CardLayout;
        if (isPage) {
            // The page that comes takes the keyboard itself, once it stands where it was left.
            return pages;
        }
        Optional<Component> first =
                isGone && SwingUtilities.isDescendingFrom(from, pages) ? Focusing.find(pages) : Optional.empty();
        return first.orElseGet(() -> super.getComponentAfter(root, from));
    }
}
