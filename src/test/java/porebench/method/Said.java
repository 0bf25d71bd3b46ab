package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;

/** Problems as a test looks at them: by code, and in words that have no gap left in them. */
public final class Said {
    private Said() {}

    /** Returns the English message of a problem, after a look that nothing in it was left unfilled. */
    public static String text(Problem problem) {
        String text = ProblemText.in(Locale.ENGLISH).say(problem);
        assertThat(text).doesNotContain("{").doesNotContain("}").doesNotContain("''");
        return text;
    }

    /** Returns the one problem with a code, after a look that there is one and that it can be said. */
    public static Problem one(List<Problem> problems, String code) {
        List<Problem> found =
                problems.stream().filter(problem -> problem.code().equals(code)).toList();
        assertThat(found).as("%s among %s", code, codes(problems)).hasSize(1);
        text(found.get(0));
        return found.get(0);
    }

    /** Returns the codes of some problems in their order, after a look that each can be said. */
    public static List<String> codes(List<Problem> problems) {
        problems.forEach(Said::text);
        return problems.stream().map(Problem::code).toList();
    }
}
