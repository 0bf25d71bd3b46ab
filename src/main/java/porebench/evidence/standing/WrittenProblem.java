package porebench.evidence.standing;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.method.Severity;

/** A problem as a text and back: its code and values, so that it can be said in any language later. */
final class WrittenProblem {
    private static final int BEFORE_VALUES = 4;

    private WrittenProblem() {}

    /** Returns a problem as a text; where in a file it stands is not kept. */
    static String of(Problem problem) {
        List<String> parts = new ArrayList<>(
                List.of(problem.severity().name(), problem.kind().name(), problem.field(), problem.code()));
        problem.values().forEach(value -> parts.add(written(value)));
        return Joined.of(parts);
    }

    private static String written(Object value) {
        if (value instanceof String text) {
            return "s" + text;
        }
        if (value instanceof Integer whole) {
            return "i" + whole;
        }
        if (value instanceof Long whole) {
            return "l" + whole;
        }
        if (value instanceof Double number) {
            return "d" + number;
        }
        if (value instanceof BigDecimal typed) {
            return "n" + typed;
        }
        if (value instanceof Problem.Word word) {
            return "w" + word.id();
        }
        if (value instanceof Problem.Clause clause) {
            return "c" + clause.text();
        }
        if (value instanceof Instant moment) {
            return "t" + moment;
        }
        if (value instanceof Problem within) {
            return "p" + of(within);
        }
        throw new IllegalArgumentException(
                "a value of a problem must be a text, a number, a word, a clause, a moment or a problem, but is a "
                        + value.getClass().getName());
    }

    /**
     * Returns the problem of a text.
     *
     * @throws RuntimeException if that is no such text
     */
    static Problem read(String text) {
        List<String> parts = Joined.parts(text);
        return new Problem(
                Severity.valueOf(parts.get(0)),
                Problem.Kind.valueOf(parts.get(1)),
                parts.get(2),
                parts.get(3),
                parts.stream().skip(BEFORE_VALUES).map(WrittenProblem::value).toList(),
                Optional.empty());
    }

    private static Object value(String written) {
        String text = written.substring(1);
        return switch (written.charAt(0)) {
            case 's' -> text;
            case 'i' -> Integer.valueOf(text);
            case 'l' -> Long.valueOf(text);
            case 'd' -> Double.valueOf(text);
            case 'n' -> new BigDecimal(text);
            case 'w' -> new Problem.Word(text);
            case 'c' -> new Problem.Clause(text);
            case 't' -> Instant.parse(text);
            case 'p' -> read(text);
            default -> throw new IllegalArgumentException("a value must begin with its sort, but is " + written);
        };
    }
}
