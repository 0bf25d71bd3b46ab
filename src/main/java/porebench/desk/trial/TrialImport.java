package porebench.desk.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.intake.Incoming;
import porebench.evidence.intake.Intake;
import porebench.evidence.intake.Sheet;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.Determination;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/**
 * A trial sheet read for one mix and checked against the lab book; nothing of it is kept yet.
 *
 * @param file the name of the file
 * @param drafts the good trials, with the determination they begin
 * @param trials how many trials are good
 * @param alreadyThere how many stand in the lab book unchanged
 * @param problems every problem, with line and column
 */
record TrialImport(String file, List<Draft> drafts, int trials, int alreadyThere, List<Problem> problems) {
    TrialImport {
        drafts = List.copyOf(drafts);
        problems = List.copyOf(problems);
    }

    /**
     * Checks a sheet.
     *
     * @param book the lab book
     * @param mixId the mix; rows of another one are left out, each with a problem
     * @param begun a determination that was begun but is not in the lab book yet, which the trials then join
     * @param sheet what was read
     * @param today the day on which it is to be kept
     */
    static TrialImport check(
            LabBook book, MixId mixId, Optional<Determination> begun, Sheet<Trial> sheet, LocalDate today) {
        List<Problem> problems = new ArrayList<>(sheet.problems());
        List<Incoming> incoming = new ArrayList<>();
        for (Sheet.Row<Trial> row : sheet.rows()) {
            Place place = sheet.place(row);
            Trial trial = row.value();
            if (trial.mixId().equals(mixId)) {
                incoming.add(new Incoming(place, joining(trial, begun.map(Determination::id))));
            } else {
                problems.add(Problem.error(
                                "mixId",
                                "import.row-of-another-mix",
                                trial.id().text(),
                                trial.mixId().text(),
                                mixId.text())
                        .at(place));
            }
        }
        Intake.Result result = Intake.check(book, incoming, today);
        problems.addAll(result.problems());
        List<Draft> drafts = result.drafts().stream()
                .map(draft -> begun.filter(
                                one -> one.recordId().equals(draft.value().recordId()))
                        .map(Draft::of)
                        .orElse(draft))
                .toList();
        int trials = (int)
                drafts.stream().filter(draft -> draft.value() instanceof Trial).count();
        return new TrialImport(sheet.file(), drafts, trials, result.alreadyThere(), problems);
    }

    /** A row that names no determination goes into the one just begun. */
    private static Trial joining(Trial trial, Optional<DeterminationId> begun) {
        return begun.isEmpty() || trial.namesDetermination() ? trial : trial.in(begun.get());
    }
}
