package porebench.desk.manual;

import java.text.Normalizer;
import java.util.Locale;

/** Texts that are put into Markdown or looked for in it. */
final class MarkdownText {
    private MarkdownText() {}

    /** Returns a text that Markdown shows as it stands. */
    static String escaped(String text) {
        return text.replaceAll("([\\\\`*_{}\\[\\]<>()#+!|&~-])", "\\\\$1").replaceAll("\\R", " ");
    }

    /** Returns the name by which a heading is linked to: its words in small letters, joined by hyphens. */
    static String anchor(String heading) {
        return heading.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}\\s_-]", "")
                .strip()
                .replaceAll("\\s", "-");
    }

    /** Returns a text as it is compared: small letters without accents. */
    static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
    }
}
