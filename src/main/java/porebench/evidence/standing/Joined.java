package porebench.evidence.standing;

import java.util.ArrayList;
import java.util.List;

/** Texts joined into one and parted again; each may hold anything, joined texts among it. */
final class Joined {
    private static final char BETWEEN = '\t';
    private static final char MARK = '\\';
    private static final String NONE = "\\0";

    private Joined() {}

    /** Returns the texts as one. */
    static String of(List<String> texts) {
        if (texts.isEmpty()) {
            return NONE;
        }
        StringBuilder joined = new StringBuilder();
        for (int i = 0; i < texts.size(); i++) {
            if (i > 0) {
                joined.append(BETWEEN);
            }
            add(texts.get(i), joined);
        }
        return joined.toString();
    }

    private static void add(String text, StringBuilder to) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == BETWEEN) {
                to.append(MARK).append('t');
            } else if (c == MARK) {
                to.append(MARK).append(MARK);
            } else {
                to.append(c);
            }
        }
    }

    /**
     * Returns the texts that were joined.
     *
     * @throws IllegalArgumentException if that is no such text
     */
    static List<String> parts(String joined) {
        if (joined.equals(NONE)) {
            return List.of();
        }
        List<String> texts = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < joined.length(); i++) {
            char c = joined.charAt(i);
            if (c == BETWEEN) {
                texts.add(text.toString());
                text.setLength(0);
            } else if (c == MARK) {
                i++;
                text.append(marked(joined, i));
            } else {
                text.append(c);
            }
        }
        texts.add(text.toString());
        return texts;
    }

    private static char marked(String joined, int at) {
        char c = at < joined.length() ? joined.charAt(at) : BETWEEN;
        if (c != 't' && c != MARK) {
            throw new IllegalArgumentException("what stands behind a mark must be t or the mark, but is " + c);
        }
        return c == 't' ? BETWEEN : MARK;
    }
}
