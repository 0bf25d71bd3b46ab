package porebench.desk.manual;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.method.Texts;

/**
 * Sentences of the program that the manual quotes.
 *
 * <p>A page has them between marks that name bundle and key, {@code <!-- text desk.trial.trial state.void -->void<!-- /text -->}, so that
 * they are the program's own, in the language of whoever reads them.
 */
public final class TextMarks {
    private static final Pattern MARKED = Pattern.compile("<!-- text (\\S+) (\\S+) -->(.*?)<!-- /text -->");

    private TextMarks() {}

    /** Returns a page with its quoted sentences in a language, the marks left out. */
    static String shown(String markdown, Locale locale) {
        return filled(markdown, locale, "$1");
    }

    /** Returns a page with its quoted sentences as they are in a language today, the marks kept. */
    public static String anew(String markdown, Locale locale) {
        return filled(markdown, locale, "<!-- text %s %s -->$1<!-- /text -->");
    }

    private static String filled(String markdown, Locale locale, String around) {
        Matcher marked = MARKED.matcher(markdown);
        StringBuilder filled = new StringBuilder();
        while (marked.find()) {
            Texts texts = Texts.of("porebench." + marked.group(1), locale);
            String sentence = MarkdownText.escaped(ProblemList.said(texts.plain(marked.group(2))));
            String whole = around.replace("%s %s", marked.group(1) + " " + marked.group(2))
                    .replace("$1", sentence);
            marked.appendReplacement(filled, Matcher.quoteReplacement(whole));
        }
        return marked.appendTail(filled).toString();
    }
}
