package porebench.desk.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.SheetImport;
import porebench.evidence.intake.Sheet;
import porebench.method.Problem;
import porebench.record.Determination;
import porebench.record.Kept;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/** What the page of one mix takes of sheets: its own trials, which go into the determination that was begun on it. */
final class TrialsTaken {
    private final MixId mixId;
    private final Optional<Determination> begun;

    private TrialsTaken(MixId mixId, Optional<Determination> begun) {
        this.mixId = mixId;
        this.begun = begun;
    }

    /**
     * Returns what is taken.
     *
     * @param mixId the mix; trials of another one are left out, each with a problem
     * @param begun a determination that was begun but is not in the lab book yet, which trials that name none then join
     */
    static SheetImport.Taking of(MixId mixId, Optional<Determination> begun) {
        TrialsTaken taken = new TrialsTaken(mixId, begun);
        return new SheetImport.Taking(taken::rows, taken::drafts);
    }

    private Sheet<Kept> rows(Sheet<Kept> sheet) {
        List<Sheet.Row<Kept>> rows = new ArrayList<>();
        List<Problem> problems = new ArrayList<>(sheet.problems());
        for (Sheet.Row<Kept> row : sheet.rows()) {
            if (!(row.value() instanceof Trial trial)) {
                rows.add(row);
            } else if (trial.mixId().equals(mixId)) {
                rows.add(new Sheet.Row<>(row.line(), joining(trial, begun.map(Determination::id)), row.simulated()));
            } else {
                problems.add(Problem.error(
                                "mixId",
                                "import.row-of-another-mix",
                                trial.id().text(),
                                trial.mixId().text(),
                                mixId.text())
                        .at(sheet.place(row)));
            }
        }
        return new Sheet<>(sheet.file(), rows, problems);
    }

    /** A row that names no determination goes into the one just begun. */
    private static Trial joining(Trial trial, Optional<DeterminationId> begun) {
        return begun.isEmpty() || trial.namesDetermination() ? trial : trial.in(begun.get());
    }

    /** The determination that was begun is kept with what was said of it. */
    private List<Draft> drafts(List<Draft> drafts) {
        return drafts.stream()
                .map(draft -> begun.filter(
                                one -> one.recordId().equals(draft.value().recordId()))
                        .map(Draft::of)
                        .orElse(draft))
                .toList();
    }
}
