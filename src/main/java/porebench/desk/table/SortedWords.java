package porebench.desk.table;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of a cell as a table sorts by them: those that begin with a number by the number, empty ones first, others by their
 * letters, in which digits count as the number they say, so that T-9 stands before T-10.
 *
 * @param words the words, in small letters
 */
record SortedWords(String words) implements Comparable<SortedWords> {
    private static final Pattern NUMBER = Pattern.compile("([-\u2212]?)(\\d+(?:[.,]\\d+)?)(?:[\\s\u00A0\u202F%].*)?");
    private static final Pattern PARTS = Pattern.compile("\\d{1,18}|\\D+|\\d+");

    static SortedWords of(String words, Locale locale) {
        return new SortedWords(words.strip().toLowerCase(locale));
    }

    private Optional<BigDecimal> number() {
        Matcher found = NUMBER.matcher(words);
        return found.matches()
                ? Optional.of(new BigDecimal(found.group(2).replace(',', '.')))
                        .map(size -> found.group(1).isEmpty() ? size : size.negate())
                : Optional.empty();
    }

    @Override
    public int compareTo(SortedWords other) {
        Optional<BigDecimal> mine = number();
        Optional<BigDecimal> theirs = other.number();
        if (mine.isPresent() && theirs.isPresent()) {
            int order = mine.get().compareTo(theirs.get());
            return order != 0 ? order : words.compareTo(other.words);
        }
        if (mine.isPresent() || theirs.isPresent()) {
            boolean isFirst = mine.isPresent() ? !other.words.isEmpty() : words.isEmpty();
            return isFirst ? -1 : 1;
        }
        return byParts(other);
    }

    private int byParts(SortedWords other) {
        Matcher mine = PARTS.matcher(words);
        Matcher theirs = PARTS.matcher(other.words);
        while (true) {
            boolean more = mine.find();
            boolean moreThere = theirs.find();
            if (!more || !moreThere) {
                return Boolean.compare(more, moreThere);
            }
            int order = part(mine.group(), theirs.group());
            if (order != 0) {
                return order;
            }
        }
    }

    private static int part(String one, String other) {
        return Character.isDigit(one.charAt(0)) && Character.isDigit(other.charAt(0))
                ? new BigDecimal(one).compareTo(new BigDecimal(other))
                : one.compareTo(other);
    }
}
