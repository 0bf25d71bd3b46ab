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
        int from = 0;
        for (int end = joined.indexOf(BETWEEN); end >= 0; end = joined.indexOf(BETWEEN, from)) {
            texts.add(plain(joined, from, end));
            from = end + 1;
        }
        texts.add(plain(joined, from, joined.length()));
        return texts;
    }

    /** Returns one of the texts as it was before it was joined; what stands between is never marked, so that it ends there. */
    private static String plain(String joined, int from, int end) {
        int mark = nextMark(joined, from, end);
        if (mark == end) {
            return joined.substring(from, end);
        }
        StringBuilder text = new StringBuilder(end - from);
        int begin = from;
        while (mark < end) {
            text.append(joined, begin, mark).append(marked(joined, mark + 1));
            begin = mark + 2;
            mark = nextMark(joined, begin, end);
        }
        return text.append(joined, begin, end).toString();
    }

    private static int nextMark(String joined, int from, int end) {
        int at = from;
        while (at < end && joined.charAt(at) != MARK) {
            at++;
        }
        return at;
    }

    private static char marked(String joined, int at) {
        char c = at < joined.length() ? joined.charAt(at) : BETWEEN;
        if (c != 't' && c != MARK) {
            throw new IllegalArgumentException("what stands behind a mark must be t or the mark, but is " + c);
        }
        return c == 't' ? BETWEEN : MARK;
    }
}
