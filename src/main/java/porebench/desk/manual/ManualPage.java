package porebench.desk.manual;

import java.util.List;

/**
 * One page of the manual.
 *
 * @param name its file without the ending, such as {@code weigh-out}
 * @param title its first heading
 * @param markdown its text, in CommonMark with tables
 * @param isTranslated whether it is in the language that was asked for; otherwise it is in English
 * @param anchors of a translated page, the names of the headings of the English one in their order, by which all pages link to it
 */
public record ManualPage(String name, String title, String markdown, boolean isTranslated, List<String> anchors) {
    /** The page that lists all others, in their order. */
    public static final String CONTENTS = "README";

    public ManualPage {
        anchors = List.copyOf(anchors);
    }

    /** Makes a page whose title stands in its first line. */
    static ManualPage of(String name, String markdown, boolean isTranslated) {
        String first = markdown.lines().findFirst().orElse("");
        return new ManualPage(name, first.replaceFirst("^#\\s*", ""), markdown, isTranslated, List.of());
    }

    /** Returns the page with the names by which the headings of the English page are linked to. */
    ManualPage linkedAs(ManualPage english) {
        return new ManualPage(name, title, markdown, isTranslated, ManualHtml.anchors(english));
    }
}
