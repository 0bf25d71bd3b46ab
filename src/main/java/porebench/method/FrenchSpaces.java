package porebench.method;

import java.util.regex.Pattern;

/**
 * Puts spaces that do not break where French sets one before a mark: {@code : ; ? ! »}, before the percent sign of a number, and behind {@code «}.
 *
 * <p>In a bundle they stand as common spaces, which nobody mistakes. The wide one (U+00A0) is taken before every mark, also where
 * printers prefer a narrow one: every typeface has it. A percent sign before a letter is left alone: {@code %n} is a new line to
 * the help of the command line.
 */
final class FrenchSpaces {
    private static final Pattern BEFORE = Pattern.compile(" (?=[:;?!»])|(?<=[\\d}]) (?=%(?!\\p{L}))");
    private static final Pattern BEHIND = Pattern.compile("(?<=«) ");
    private static final String UNBROKEN = "\u00a0";

    private FrenchSpaces() {}

    static String in(String text) {
        return BEHIND.matcher(BEFORE.matcher(text).replaceAll(UNBROKEN)).replaceAll(UNBROKEN);
    }
}
