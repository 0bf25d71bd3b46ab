package porebench.exchange.text;

import java.util.ArrayList;
import java.util.List;
import porebench.method.Place;
import porebench.method.Problem;

/** The problems found in one file so far. A file that is no table at all cannot fill the memory with them. */
public final class Findings {
    /** No person reads more than this; what is found beyond is counted. */
    public static final int MOST_LISTED = 10_000;

    private static final int LONGEST_QUOTED = 40;

    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private int unlisted;

    public Findings(String file) {
        this.file = file;
    }

    String file() {
        return file;
    }

    /** Notes an error; line and column are counted from 1, and 0 where it is about the whole. */
    public void error(int line, int column, String field, String code, Object... values) {
        if (problems.size() < MOST_LISTED) {
            problems.add(Problem.error(field, code, values).at(place(file, line, column)));
        } else {
            unlisted++;
        }
    }

    /** Notes a doubt; line and column are counted from 1, and 0 where it is about the whole. */
    public void warning(int line, int column, String field, String code, Object... values) {
        if (problems.size() < MOST_LISTED) {
            problems.add(Problem.warning(field, code, values).at(place(file, line, column)));
        }
    }

    /** Returns a place of which line or column may be 0 where it is about the whole. */
    public static Place place(String file, int line, int column) {
        if (line == 0) {
            return Place.of(file);
        }
        return column == 0 ? Place.of(file, line) : Place.of(file, line, column);
    }

    public boolean isEmpty() {
        return problems.isEmpty();
    }

    /** Returns all problems in the order of the file, and how many more there are. */
    public List<Problem> all() {
        List<Problem> all = new ArrayList<>(problems);
        all.sort((one, other) -> {
            int byLine = Integer.compare(lineOf(one), lineOf(other));
            return byLine != 0 ? byLine : Integer.compare(columnOf(one), columnOf(other));
        });
        if (unlisted > 0) {
            all.add(Problem.error("", "csv.more-problems", unlisted).at(Place.of(file)));
        }
        return all;
    }

    private static int lineOf(Problem problem) {
        return problem.place().flatMap(Place::line).orElse(0);
    }

    private static int columnOf(Problem problem) {
        return problem.place().flatMap(Place::column).orElse(0);
    }

    /** Returns a text as a message quotes it: on one line and not longer than a glance takes. */
    public static String quoted(String text) {
        String oneLine = text.strip().replaceAll("\\p{Cntrl}+", " ");
        if (oneLine.codePointCount(0, oneLine.length()) <= LONGEST_QUOTED) {
            return oneLine;
        }
        return oneLine.substring(0, oneLine.offsetByCodePoints(0, LONGEST_QUOTED)) + "…";
    }
}
