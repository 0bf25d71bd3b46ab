package porebench.desk.trial;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Proposes the name of the next trial: that of the last one, its number at the end raised by one. */
final class NextTrialId {
    private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,9})");

    private NextTrialId() {}

    /**
     * Proposes a name.
     *
     * @param last the name of the last trial of the mix; empty before the first
     * @param mixId the name of the mix, which the first trial is named after
     * @param taken tells whether a name is in the lab book already
     */
    static String after(Optional<String> last, String mixId, Predicate<String> taken) {
        Matcher matcher = NUMBERED.matcher(last.orElse(""));
        boolean goesOn = matcher.matches();
        String stem = goesOn ? matcher.group(1) : mixId + "-T";
        int width = goesOn ? matcher.group(2).length() : 1;
        long number = goesOn ? Long.parseLong(matcher.group(2)) + 1 : 1;
        while (taken.test(name(stem, number, width))) {
            number++;
        }
        return name(stem, number, width);
    }

    private static String name(String stem, long number, int width) {
        String digits = Long.toString(number);
        return stem + "0".repeat(Math.max(0, width - digits.length())) + digits;
    }
}
