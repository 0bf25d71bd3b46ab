package porebench.exchange.text;

import java.util.regex.Pattern;

/**
 * Texts that a spreadsheet program would take for a formula, made harmless when written and themselves again when read.
 *
 * <p>A text that begins with {@code =}, {@code +}, {@code -}, {@code @}, a tabulator or a line break gets an apostrophe before
 * it, and so does one that begins with apostrophes and then one of these; reading takes one apostrophe away again. Any other
 * text stands as it is, also one that begins with an apostrophe. A number is never touched, whatever its sign.
 *
 * <p>Source of the characters: common practice, no source; the wide forms of the four signs are taken for them by some programs.
 */
public final class HarmlessCell {
    private static final String SIGNS = "[=+\\-@\\t\\r\\n\uFF1D\uFF0B\uFF0D\uFF20]";
    private static final Pattern RISKY = Pattern.compile("'*" + SIGNS + ".*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("'*[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");

    private HarmlessCell() {}

    /** Returns a text as it is written into a cell. */
    public static String written(String text) {
        return isRisky(text) ? "'" + text : text;
    }

    /** Returns the text that stands in a cell. */
    public static String read(String cell) {
        return cell.startsWith("'") && isRisky(cell) ? cell.substring(1) : cell;
    }

    private static boolean isRisky(String text) {
        return RISKY.matcher(text).matches() && !NUMBER.matcher(text).matches();
    }
}
