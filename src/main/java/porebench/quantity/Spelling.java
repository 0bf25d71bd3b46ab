package porebench.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How people write a number with its unit: {@code 22 °C}, {@code 0.25 ft³}, {@code 350 cm3}, with spaces that do not break.
 *
 * <p>The window, the command line and the reading of files ask here, so that what one understands the others do.
 */
public final class Spelling {
    private static final String UNIT_BEGINS = "(?![eE][+-]?\\d)(?:[°º]\\h*)?[A-Za-z%℃℉]";
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("(?s)(.*?[\\d.,])[\\s\\h]*(" + UNIT_BEGINS + "[A-Za-z0-9/²³^]*)");
    private static final Pattern TWO_WORDS = Pattern.compile("(?s)(.*\\S)[\\s\\h]+(\\S+)");

    /** Other names of units, in small letters, each with the symbol of the same unit. */
    private static final Map<String, String> OTHER_NAMES =
            Map.of("cm3", "mL", "cc", "mL", "dm3", "L", "lbs", "lb", "hpa", "mbar", "%", "pct");

    private Spelling() {}

    /**
     * The two halves of a quantity as it was typed.
     *
     * @param number what stands for the number
     * @param unit what stands for the unit; empty text when nothing does
     */
    public record Halves(String number, String unit) {}

    /** Returns a text without the space around it, of whatever kind. */
    public static String stripped(String text) {
        int begin = 0;
        int end = text.length();
        while (begin < end && isSpace(text.charAt(begin))) {
            begin++;
        }
        while (end > begin && isSpace(text.charAt(end - 1))) {
            end--;
        }
        return text.substring(begin, end);
    }

    private static boolean isSpace(char character) {
        return Character.isWhitespace(character) || Character.isSpaceChar(character);
    }

    /** Returns the number and the unit of a text, neither of them judged. */
    public static Halves halves(String text) {
        String stripped = stripped(text);
        Matcher matcher = NUMBER_AND_UNIT.matcher(stripped);
        if (!matcher.matches()) {
            matcher = TWO_WORDS.matcher(stripped);
        }
        // Two numbers are no number with a unit.
        boolean hasTwo = matcher.matches() && matcher.group(2).matches(".*[A-Za-z%°º℃℉].*");
        return hasTwo ? new Halves(stripped(matcher.group(1)), matcher.group(2)) : new Halves(stripped, "");
    }

    /** Returns whether a unit as typed is the one of a symbol, letter case not mattering. */
    public static boolean means(String typed, String symbol) {
        String plain = stripped(typed)
                .replaceFirst("^[°º]\\h*", "")
                .replace('℃', 'C')
                .replace('℉', 'F')
                .replace('²', '2')
                .replace('³', '3')
                .replace("^", "");
        String other = Optional.ofNullable(OTHER_NAMES.get(plain.toLowerCase(Locale.ROOT)))
                .orElse(plain);
        return plain.equalsIgnoreCase(symbol) || other.equals(symbol);
    }
}
