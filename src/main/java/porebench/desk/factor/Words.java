package porebench.desk.factor;

import java.util.List;

/** Sentences for a label that wraps its lines. */
final class Words {
    private Words() {}

    static String html(List<String> sentences) {
        return "<html>"
                + String.join("<br>", sentences.stream().map(Words::escaped).toList()) + "</html>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
