package porebench.desk.bench;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/**
 * How the laboratory's balance writes a mass, as a regular expression. The group {@code number} is the mass; {@code unit}, where
 * there is such a group, its unit; and {@code unstable}, where it took part, says that the balance has not come to rest.
 */
public final class BalancePattern {
    /** What most lines with a mass and its unit fit. */
    public static final String USUAL =
            "^(?<unstable>\\?|US,)?.*?(?<number>[+-]?\\s*\\d+(?:[.,]\\d+)?)\\s*(?<unit>kg|g|lb|oz)\\b";

    private static final String NUMBER = "(?<number>";
    private static final int LONGEST = 400;

    private final Pattern pattern;

    private BalancePattern(Pattern pattern) {
        this.pattern = pattern;
    }

    /** Returns the pattern that a text is; empty where it is none, or has no group for the number. */
    public static Optional<BalancePattern> parse(String text) {
        if (!text.contains(NUMBER) || text.length() > LONGEST) {
            return Optional.empty();
        }
        try {
            return Optional.of(new BalancePattern(Pattern.compile(text)));
        } catch (PatternSyntaxException wrong) {
            return Optional.empty();
        }
    }

    /** Reads a line; one that is no mass, or of a balance not at rest, gives none and says so. */
    public BalanceReading read(String line) {
        Matcher matcher = pattern.matcher(line);
        Optional<String> number = matcher.find() ? group(matcher, "number") : Optional.empty();
        if (number.isEmpty()) {
            return new BalanceReading(BalanceReading.Kind.NO_MASS, "", "", line);
        }
        BalanceReading.Kind kind =
                group(matcher, "unstable").isPresent() ? BalanceReading.Kind.NOT_AT_REST : BalanceReading.Kind.MASS;
        return new BalanceReading(
                kind,
                number.get().replaceAll("\\s", "").replaceFirst("^\\+", "").replace(',', '.'),
                group(matcher, "unit").orElse("").strip(),
                line);
    }

    private static Optional<String> group(Matcher matcher, String name) {
        try {
            return Optional.ofNullable(matcher.group(name)).filter(text -> !text.isEmpty());
        } catch (IllegalArgumentException without) {
            return Optional.empty();
        }
    }
}
