package porebench.desk.manual;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Which page of the manual is on view, which were before, and what was found. */
public final class ManualModel {
    private final Manual manual;
    private final ManualSearch search;
    private final Deque<Spot> before = new ArrayDeque<>();
    private final Deque<Spot> after = new ArrayDeque<>();
    private Spot now = new Spot(ManualPage.CONTENTS, "");

    /**
     * A place in the manual.
     *
     * @param page the name of a page
     * @param anchor a heading or code in it; blank for its top
     */
    public record Spot(String page, String anchor) {
        /** Returns the place that a link such as {@code doubts.md#void} leads to; empty where it leads out of the manual. */
        public static Optional<Spot> ofLink(String link, String from) {
            int hash = link.indexOf('#');
            String file = hash < 0 ? link : link.substring(0, hash);
            String anchor = hash < 0 ? "" : link.substring(hash + 1);
            if (file.isEmpty()) {
                return Optional.of(new Spot(from, anchor));
            }
            boolean isPage = file.endsWith(".md") && !file.contains("/") && !file.contains(":");
            return isPage
                    ? Optional.of(new Spot(file.substring(0, file.length() - ".md".length()), anchor))
                    : Optional.empty();
        }
    }

    public ManualModel(Manual manual) {
        this.manual = manual;
        this.search = new ManualSearch(manual);
    }

    /** Returns the pages in their order, the contents first. */
    public List<ManualPage> pages() {
        return manual.pages();
    }

    /** Returns where the reader is. */
    public Spot now() {
        return now;
    }

    /** Returns the page on view. */
    public ManualPage page() {
        return manual.named(now.page()).orElseThrow();
    }

    /** Turns to a place; a page that is not there is passed over. Returns whether there is something else on view now. */
    public boolean open(Spot spot) {
        if (manual.named(spot.page()).isEmpty() || spot.equals(now)) {
            return false;
        }
        before.push(now);
        after.clear();
        now = spot;
        return true;
    }

    /** Follows a link of the page on view; returns whether it leads to a page of the manual. */
    public boolean follow(String link) {
        return Spot.ofLink(link, now.page()).filter(this::open).isPresent();
    }

    public boolean canGoBack() {
        return !before.isEmpty();
    }

    public boolean canGoForward() {
        return !after.isEmpty();
    }

    /** Turns to where the reader was before. */
    public void back() {
        if (canGoBack()) {
            after.push(now);
            now = before.pop();
        }
    }

    /** Turns to where the reader came back from. */
    public void forward() {
        if (canGoForward()) {
            before.push(now);
            now = after.pop();
        }
    }

    /** Returns the pages in which all words stand. */
    public List<ManualSearch.Found> find(String words) {
        return search.find(words);
    }
}
