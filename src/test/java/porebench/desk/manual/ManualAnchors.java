package porebench.desk.manual;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;

/** The places of a page that can be linked to, as they are in its HTML; its top has no name. */
public final class ManualAnchors {
    private static final Pattern NAME = Pattern.compile("<a name=\"([^\"]*)\"");

    private ManualAnchors() {}

    public static Set<String> of(ManualPage page) {
        Set<String> anchors = new HashSet<>(Set.of(""));
        NAME.matcher(ManualHtml.of(page, "", 100)).results().forEach(found -> anchors.add(found.group(1)));
        return anchors;
    }
}
