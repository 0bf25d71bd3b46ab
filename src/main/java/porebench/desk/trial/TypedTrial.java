package porebench.desk.trial;

import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.method.trial.TrialFactor;
import porebench.record.Trial;
import porebench.record.column.Column;

/**
 * A trial as typed and read.
 *
 * @param trial the trial it would be; empty while no meter is chosen or no determination takes it
 * @param figures its factor and doubts
 * @param problems everything wrong or doubtful
 */
record TypedTrial(Optional<Trial> trial, Optional<TrialFactor> figures, List<Problem> problems) {

    TypedTrial {
        problems = List.copyOf(problems);
    }

    /** Returns what forbids keeping it; a leak does not, it only voids the trial. */
    List<Problem> errors() {
        boolean leaked = problems.stream().anyMatch(problem -> problem.kind() == Problem.Kind.VOID);
        return problems.stream()
                .filter(Problem::isError)
                .filter(problem ->
                        !leaked || problem.kind() != Problem.Kind.VOID && problem.kind() != Problem.Kind.NOT_MEASURED)
                .toList();
    }

    /** Returns the first field with a text, number or day that was refused; a field still empty or a leak is none. */
    Optional<Column<Trial, ?>> refused() {
        return problems.stream()
                .filter(Problem::isError)
                .filter(problem ->
                        problem.kind() != Problem.Kind.VOID && !problem.kind().isNotYet())
                .flatMap(problem -> BenchFields.measured(problem.field()).stream())
                .findFirst();
    }

    /** Returns the factor to show while typing: none while anything that was measured is refused. */
    Optional<TrialFactor> live() {
        return figures.filter(any -> refused().isEmpty());
    }

    /** Returns what makes a trial that counts doubtful; it is kept only with a reason. */
    List<Problem> doubts() {
        return figures.filter(TrialFactor::counts).isEmpty()
                ? List.of()
                : problems.stream().filter(problem -> !problem.isError()).toList();
    }
}
