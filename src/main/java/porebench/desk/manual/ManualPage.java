package porebench.desk.manual;

/**
 * One page of the manual.
 *
 * @param name its file without the ending, such as {@code weigh-out}
 * @param title its first heading
 * @param markdown its text, in CommonMark with tables
 * @param isTranslated whether it is in the language that was asked for; otherwise it is in English
 */
public record ManualPage(String name, String title, String markdown, boolean isTranslated) {
    /** The page that lists all others, in their order. */
    public static final String CONTENTS = "README";

    /** Makes a page whose title stands in its first line. */
    static ManualPage of(String name, String markdown, boolean isTranslated) {
        String first = markdown.lines().findFirst().orElse("");
        return new ManualPage(name, first.replaceFirst("^#\\s*", ""), markdown, isTranslated);
    }
}
