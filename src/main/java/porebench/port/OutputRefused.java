package porebench.port;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import porebench.method.Problem;
import porebench.method.ProblemText;

/** A file that must not be written where it was asked for, for reasons a person can act on; nothing was written. */
public final class OutputRefused extends RuntimeException implements Spoken {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    OutputRefused(List<Problem> problems) {
        super(problems.stream()
                .map(problem -> problem.code() + " " + problem.values())
                .collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    /** Makes the refusal for a reason that lies in what was to be written. */
    public static OutputRefused of(Problem problem) {
        return new OutputRefused(List.of(problem));
    }

    /** Refuses when there is any problem. */
    public static void unlessNone(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw new OutputRefused(problems);
        }
    }

    /** Returns the reasons, to be said in the person's language. */
    public List<Problem> problems() {
        return problems;
    }

    /** Returns whether files that are there are the only reason, so that a word from the person would do. */
    public boolean isOnlyThere() {
        return problems.stream().allMatch(problem -> problem.kind() == Problem.Kind.FILE_THERE);
    }

    @Override
    public String say(Locale locale) {
        ProblemText words = ProblemText.in(locale);
        return problems.stream().map(words::say).collect(Collectors.joining("\n"));
    }
}
