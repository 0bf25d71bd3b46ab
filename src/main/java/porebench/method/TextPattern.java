package porebench.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A pattern of {@link java.text.MessageFormat} whose places take texts as they are, taken apart once: putting values in is then a matter of
 * joining. Patterns with formats of their own are left to that class.
 */
final class TextPattern {
    /** Texts and places in turn, beginning and ending with a text. */
    private final List<String> between = new ArrayList<>();

    private final List<Integer> places = new ArrayList<>();
    private final boolean isSimple;

    private TextPattern(String pattern) {
        this.isSimple = takeApart(pattern);
    }

    static TextPattern of(String pattern) {
        return new TextPattern(pattern);
    }

    private boolean takeApart(String pattern) {
        StringBuilder text = new StringBuilder();
        boolean isQuoted = false;
        for (int index = 0; index < pattern.length(); index++) {
            char letter = pattern.charAt(index);
            if (letter == '\'') {
                if (index + 1 < pattern.length() && pattern.charAt(index + 1) == '\'') {
                    text.append(letter);
                    index++;
                } else {
                    isQuoted = !isQuoted;
                }
            } else if (letter == '{' && !isQuoted) {
                // One digit: no text has more than ten places.
                boolean isPlace = index + 2 < pattern.length()
                        && pattern.charAt(index + 1) >= '0'
                        && pattern.charAt(index + 1) <= '9'
                        && pattern.charAt(index + 2) == '}';
                if (!isPlace) {
                    return false;
                }
                between.add(text.toString());
                text.setLength(0);
                places.add(pattern.charAt(index + 1) - '0');
                index += 2;
            } else {
                text.append(letter);
            }
        }
        between.add(text.toString());
        return true;
    }

    /** Returns the text with its values put in; empty where a format of its own is needed, or a value is missing or no text. */
    Optional<String> fill(Object... values) {
        if (!isSimple) {
            return Optional.empty();
        }
        StringBuilder filled = new StringBuilder(between.get(0));
        for (int place = 0; place < places.size(); place++) {
            int which = places.get(place);
            if (which >= values.length || !(values[which] instanceof String)) {
                return Optional.empty();
            }
            filled.append((String) values[which]).append(between.get(place + 1));
        }
        return Optional.of(filled.toString());
    }
}
