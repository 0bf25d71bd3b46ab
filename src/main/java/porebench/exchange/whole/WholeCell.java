package porebench.exchange.whole;

import java.util.Locale;
import java.util.Optional;

/**
 * A cell of a whole export. Nothing is an empty cell and an empty text is {@code \e}, so that the two stay apart; a backslash
 * is doubled, and a character that is no letter on a line ({@code U+0000} to {@code U+001F}, {@code U+007F}, {@code U+FFFE},
 * {@code U+FFFF}) is {@code \} and u and four hexadecimal digits, so that a row is always one line.
 */
final class WholeCell {
    private static final String EMPTY_TEXT = "\\e";

    private WholeCell() {}

    /** Returns a text as a cell. */
    static String written(String text) {
        if (text.isEmpty()) {
            return EMPTY_TEXT;
        }
        StringBuilder cell = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\') {
                cell.append("\\\\");
            } else if (c < ' ' || c == '\u007F' || c >= '\uFFFE') {
                cell.append(String.format(Locale.ROOT, "\\u%04X", (int) c));
            } else {
                cell.append(c);
            }
        }
        return cell.toString();
    }

    /** Returns the text of a cell that is not empty; empty when no text is written so. */
    static Optional<String> read(String cell) {
        if (cell.equals(EMPTY_TEXT)) {
            return Optional.of("");
        }
        StringBuilder text = new StringBuilder();
        int at = 0;
        while (at < cell.length()) {
            char c = cell.charAt(at);
            if (c != '\\') {
                text.append(c);
                at++;
            } else if (cell.startsWith("\\\\", at)) {
                text.append(c);
                at += 2;
            } else if (cell.substring(at).matches("(?s)\\\\u[0-9A-F]{4}.*")) {
                text.append((char) Integer.parseInt(cell.substring(at + 2, at + 6), 16));
                at += 6;
            } else {
                return Optional.empty();
            }
        }
        // One text has one form only: a cell that was written otherwise was changed.
        return Optional.of(text.toString()).filter(read -> written(read).equals(cell));
    }
}
