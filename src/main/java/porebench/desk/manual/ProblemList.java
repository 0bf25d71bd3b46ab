package porebench.desk.manual;

import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import porebench.method.Texts;

/** The list of all problems by their codes, made from the texts by which the program says them. */
final class ProblemList {
    private static final String GAP = "\u2026";
    private static final Pattern INNERMOST = Pattern.compile("\\{\\d+(?:,[^{}]*)?}");
    private static final Pattern FIXED = Pattern.compile("\\[(\\d[\\d.,]*)]");

    private ProblemList() {}

    /** Returns the list in Markdown: a heading for what the codes begin with, then each with its sentence. */
    static String in(Locale locale) {
        Texts texts = Texts.of("porebench.method.problems", locale);
        return texts.keys().stream()
                .filter(key -> !key.startsWith("word.") && !key.startsWith("place."))
                .sorted()
                .collect(Collectors.groupingBy(
                        key -> key.substring(0, key.indexOf('.')),
                        java.util.TreeMap::new,
                        Collectors.mapping(key -> line(key, texts.plain(key)), Collectors.joining())))
                .entrySet()
                .stream()
                .map(group -> "## " + group.getKey() + "\n\n" + group.getValue())
                .collect(Collectors.joining());
    }

    private static String line(String key, String pattern) {
        return "<a name=\"" + key + "\"></a>`" + key + "`: " + MarkdownText.escaped(said(pattern)) + "\n\n";
    }

    /** Returns a sentence with an ellipsis for each value that it names. */
    static String said(String pattern) {
        String text = FIXED.matcher(pattern).replaceAll("$1").replace("''", "'");
        for (String before = ""; !before.equals(text); ) {
            before = text;
            text = INNERMOST.matcher(text).replaceAll(GAP);
        }
        return text;
    }
}
