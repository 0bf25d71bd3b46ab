package porebench.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;

/** The rule that simulated and real trials never stand in one lab book. */
public final class Training {
    private Training() {}

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
            if (draft.value() instanceof Trial trial) {
                mixing(trial, isTraining).ifPresent(problems::add);
            }
        }
        return problems;
    }

    /** Returns why a trial cannot stand in a book, if it cannot. */
    static Optional<Problem> mixing(Trial trial, boolean isTraining) {
        if (trial.simulated() == isTraining) {
            return Optional.empty();
        }
        return Optional.of(
                trial.simulated()
                        ? Problem.error(
                                "simulated", "book.simulated-trial", trial.id().text())
                        : Problem.error(
                                "simulated", "book.real-trial", trial.id().text()));
    }
}
