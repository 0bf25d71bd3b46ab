package porebench.desk.trial;

import java.util.List;
import java.util.Optional;
import java.util.Set;
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
    /** Said only once the person wants to save: before, the form is simply not filled in yet. */
    static final Set<String> ABOUT_EMPTY_FIELDS = Set.of(
            "form.required",
            "trial.reading-missing",
            "trial.masses-missing",
            "trial.soak-missing",
            "trial.water-temperature-missing");

    private static final String LEAK = "trial.leak";
    private static final Set<String> EXCUSED_BY_A_LEAK =
            Set.of(LEAK, "trial.reading-missing", "trial.water-temperature-missing");

    TypedTrial {
        problems = List.copyOf(problems);
    }

    /** Returns what forbids keeping it; a leak does not, it only voids the trial. */
    List<Problem> errors() {
        boolean leaked = problems.stream().anyMatch(problem -> problem.code().equals(LEAK));
        return problems.stream()
                .filter(Problem::isError)
                .filter(problem -> !leaked || !EXCUSED_BY_A_LEAK.contains(problem.code()))
                .toList();
    }

    /** Returns the first field with a text, number or day that was refused; a field still empty or a leak is none. */
    Optional<Column<Trial, ?>> refused() {
        return problems.stream()
                .filter(Problem::isError)
                .filter(problem -> !problem.code().equals(LEAK) && !ABOUT_EMPTY_FIELDS.contains(problem.code()))
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
