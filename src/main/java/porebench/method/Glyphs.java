package porebench.method;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a person can see of a text: which of its characters cannot be seen, and whether two texts look the same. */
public final class Glyphs {
    /** Characters that join letters and are needed in some scripts and in some pictures. */
    private static final Set<Integer> JOINERS = Set.of(0x200C, 0x200D);

    /** Letters and marks by their category that yet show nothing: fillers, blanks and joiners. */
    private static final Set<Integer> BLANKS = Set.of(0x034F, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x2800, 0x3164, 0xFFA0);

    private Glyphs() {}

    /** What is wrong with a character; its name is the word of a message. */
    public enum Unseen {
        LINE_BREAK("line-break"),
        CONTROL("control-character"),
        DIRECTION("direction-mark"),
        INVISIBLE("invisible-character"),
        SPACE("odd-space"),
        NO_CHARACTER("no-character");

        private final String word;

        Unseen(String word) {
            this.word = word;
        }

        /** Returns the key of its word. */
        public String word() {
            return word;
        }
    }

    /** Returns what is wrong with a character in the name of a record; empty when it can be seen, or is a plain space. */
    public static Optional<Unseen> inName(int character) {
        boolean selects = character >= 0xFE00 && character <= 0xFE0F
                || character >= 0x180B && character <= 0x180F
                || character >= 0xE0100 && character <= 0xE01EF;
        if (selects || JOINERS.contains(character) || BLANKS.contains(character)) {
            return Optional.of(Unseen.INVISIBLE);
        }
        if (Character.getType(character) == Character.UNASSIGNED) {
            return Optional.of(Unseen.NO_CHARACTER);
        }
        boolean oddSpace = character != ' ' && Character.getType(character) == Character.SPACE_SEPARATOR;
        return oddSpace ? Optional.of(Unseen.SPACE) : inLine(character);
    }

    /** Returns what is wrong with a character in a text of one line; empty when nothing is. */
    public static Optional<Unseen> inLine(int character) {
        return switch (Character.getType(character)) {
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> Optional.of(Unseen.LINE_BREAK);
            case Character.CONTROL ->
                Optional.of(
                        character == '\n' || character == '\r' || character == 0x85
                                ? Unseen.LINE_BREAK
                                : Unseen.CONTROL);
            case Character.FORMAT -> ofFormat(character);
            case Character.SURROGATE, Character.PRIVATE_USE -> Optional.of(Unseen.NO_CHARACTER);
            default -> Optional.empty();
        };
    }

    /** Returns what is wrong with a character in a text that may have lines and tabs; empty when nothing is. */
    public static Optional<Unseen> inNote(int character) {
        return character == '\n' || character == '\r' || character == '\t' ? Optional.empty() : inLine(character);
    }

    private static Optional<Unseen> ofFormat(int character) {
        if (JOINERS.contains(character)) {
            return Optional.empty();
        }
        boolean turns = character == 0x061C
                || character == 0x200E
                || character == 0x200F
                || character >= 0x202A && character <= 0x202E
                || character >= 0x2066 && character <= 0x2069;
        return Optional.of(turns ? Unseen.DIRECTION : Unseen.INVISIBLE);
    }

    /**
     * Returns a text as it looks: composed letters for decomposed ones, plain forms for wide and styled ones (Unicode
     * normalization form KC, UAX #15), one space for several, and nothing for what cannot be seen.
     */
    public static String look(String text) {
        StringBuilder seen = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFKC)
                .codePoints()
                .filter(character -> inName(character)
                        .filter(unseen -> unseen != Unseen.SPACE)
                        .isEmpty())
                .map(character -> Character.isSpaceChar(character) ? ' ' : character)
                .forEach(seen::appendCodePoint);
        return seen.toString().replaceAll(" +", " ").strip();
    }

    /** Returns a text as it looks when capital and small letters are not told apart. */
    public static String lookWithoutCase(String text) {
        return look(text).toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }

    /** Returns a text as a message shows it: on one line, the code in place of what cannot be seen, such as {@code [U+202E]}. */
    public static String shown(String text) {
        if (text.codePoints().allMatch(character -> inLine(character).isEmpty())) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(character -> {
            if (inLine(character).isEmpty()) {
                shown.appendCodePoint(character);
            } else {
                shown.append('[').append(code(character)).append(']');
            }
        });
        return shown.toString();
    }

    /** Returns the code of a character, such as {@code U+202E}. */
    public static String code(int character) {
        return String.format(Locale.ROOT, "U+%04X", character);
    }
}
