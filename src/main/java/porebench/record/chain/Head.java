package porebench.record.chain;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How far a lab book reaches: the short form of its newest entry's hash, and how many entries there are.
 *
 * <p>Each entry's hash covers the one before, so a head noted outside the lab book (on a card, on evidence) shows later
 * whether that entry and all before it are still what they were. Both are printed together: the hash says what, the count
 * says where.
 *
 * @param shortHash the first {@value #DIGITS} hexadecimal digits of the newest entry's hash, small letters; all 0 when the
 *     lab book is empty
 * @param entries how many entries there are, 0 when the lab book is empty
 */
public record Head(String shortHash, long entries) {
    /** How many hexadecimal digits the short form has: 64 bits, which nobody finds a second text for by trying. */
    public static final int DIGITS = 16;

    private static final int GROUP = 4;
    private static final Pattern FORM = Pattern.compile("[0-9a-f]{" + DIGITS + "}");

    /** The head of a lab book that holds nothing. */
    public static final Head EMPTY = new Head("0".repeat(DIGITS), 0);

    public Head {
        if (!FORM.matcher(shortHash).matches()) {
            throw new IllegalArgumentException(
                    "shortHash must be " + DIGITS + " hexadecimal digits, but is " + shortHash);
        }
        if (entries < 0) {
            throw new IllegalArgumentException("entries must be at least 0, but is " + entries);
        }
    }

    /** Returns the head whose newest entry has a hash, given in full. */
    public static Head of(String hash, long entries) {
        return new Head(hash.substring(0, Math.min(DIGITS, hash.length())), entries);
    }

    /** Reads the short form as a person copies it from paper, in groups or not, in whatever letter case; empty when it is none. */
    public static Optional<String> parseHash(String typed) {
        String digits = typed.replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT);
        return Optional.of(digits).filter(text -> FORM.matcher(text).matches());
    }

    /** Returns the short form in groups of four digits, as it is printed: {@code 3f2a-91c0-77de-0b1c}. */
    public String printed() {
        return shortHash.replaceAll("(.{" + GROUP + "})(?!$)", "$1-");
    }
}
