package porebench.print.page;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/** The parts of a document that stand in it once, however often they are drawn: from the second time on that one is needed. */
final class Parts {
    /** More would make the list of them, which every page refers to, long to read. */
    private static final int MOST = 2000;

    private static final int MOST_SEEN_ONCE = 5000;

    private final PDResources pages;
    private final Map<Object, Part> parts = new HashMap<>();
    private final Set<Object> seenOnce = new HashSet<>();

    Parts(PDResources pages) {
        this.pages = pages;
    }

    /**
     * A part.
     *
     * @param name its name among the resources of pages, as it is written
     * @param top where its upper edge was when it was drawn, in points from the top of the page
     */
    record Part(String name, double top) {}

    Optional<Part> find(Object key) {
        return Optional.ofNullable(parts.get(key));
    }

    /** Returns whether a part should be made now: it was needed before, and there is room. */
    boolean isDue(Object key) {
        if (parts.size() >= MOST) {
            return false;
        }
        if (seenOnce.remove(key)) {
            return true;
        }
        if (seenOnce.size() >= MOST_SEEN_ONCE) {
            seenOnce.clear();
        }
        seenOnce.add(key);
        return false;
    }

    Part keep(Object key, double top, PDFormXObject drawn) {
        String name = "X" + (parts.size() + 1);
        pages.put(COSName.getPDFName(name), drawn);
        Part part = new Part("/" + name + " ", top);
        parts.put(key, part);
        return part;
    }
}
