package porebench.port;

import porebench.method.Problem;

/** A file that cannot be opened as a lab book, for a reason a person can act on; the file is untouched. */
public final class OpeningRefused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    public OpeningRefused(Problem problem) {
        super(problem.code() + " " + problem.values());
        this.problem = problem;
    }

    /** Returns the reason, to be said in the person's language. */
    public Problem problem() {
        return problem;
    }
}
