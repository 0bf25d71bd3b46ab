package porebench.record.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.Trial;

/** What is real and what is not: simulated and real trials never stand in one lab book, and the demo's is known as invented. */
public final class Training {
    /** Who keeps the records of the demo laboratory. */
    public static final String DEMO_KEEPER = "Porebench demo";

    private Training() {}

    /** Returns whether a lab book began as that of the demo laboratory, wherever its file lies: what it holds is invented. */
    public static boolean isDemo(Records book) {
        return book.version(Laboratory.class, Laboratory.ID, 1)
                .filter(first -> first.stamp().who().equals(DEMO_KEEPER))
                .isPresent();
    }

    /**
     * Returns why some drafts must not be kept together in a book.
     *
     * @param drafts what is to be kept
     * @param laboratory the laboratory of the book before; empty when it has none yet
     * @param hasTrials whether the book holds any trial
     */
    public static List<Problem> conflicts(List<Draft> drafts, Optional<Laboratory> laboratory, boolean hasTrials) {
        boolean before = laboratory.map(Laboratory::training).orElse(false);
        boolean isTraining = drafts.stream()
                .map(Draft::value)
                .filter(Laboratory.class::isInstance)
                .map(value -> ((Laboratory) value).training())
                .reduce(before, (earlier, later) -> later);
        List<Problem> problems = new ArrayList<>();
        if (isTraining != before && hasTrials) {
            problems.add(Problem.error("training", "book.training-cannot-change"));
        }
        for (Draft draft : drafts) {
            mixing(draft.value(), isTraining).ifPresent(problems::add);
        }
        return problems;
    }

    /**
     * Returns why a record cannot stand in a book, if it cannot: a trial, a determination or a factor is of the simulated bench
     * exactly when the book is for training. A determination or factor of an older training book, which says nothing of it, is
     * marked when it is next written.
     */
    public static Optional<Problem> mixing(Kept value, boolean isTraining) {
        boolean simulated;
        if (value instanceof Trial trial) {
            simulated = trial.simulated();
        } else if (value instanceof Determination determination) {
            simulated = determination.simulated();
        } else if (value instanceof FactorIssue issue) {
            simulated = issue.isSimulated();
        } else if (value instanceof FactorProposal proposal) {
            simulated = proposal.grounds().simulated();
        } else {
            return Optional.empty();
        }
        if (simulated == isTraining) {
            return Optional.empty();
        }
        String code = value instanceof Trial
                ? simulated ? "book.simulated-trial" : "book.real-trial"
                : simulated ? "book.simulated" : "book.not-simulated";
        return Optional.of(
                value instanceof Trial
                        ? Problem.error("simulated", code, value.recordId())
                        : Problem.error("simulated", code, value.kind().word(), value.recordId()));
    }
}
