package porebench.desk.frame.dialog;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import porebench.evidence.intake.Intake;
import porebench.evidence.intake.Sheet;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;

/**
 * What one CSV file would bring into the lab book; nothing is kept before the person says so.
 *
 * @param file the name of the file
 * @param result what can be kept, and what stands there already
 * @param problems every problem, of the file and of its records against the lab book
 */
public record ImportModel(String file, Intake.Result result, List<Problem> problems) {
    public ImportModel {
        problems = List.copyOf(problems);
    }

    /**
     * Checks what was read from a file against the lab book.
     *
     * @param today the day on which it is to be kept
     * @param progress hears how far it is
     */
    public static ImportModel of(LabBook book, Sheet<Kept> sheet, LocalDate today, Progress progress) {
        Intake.Result result = Intake.check(book, Sheet.incoming(sheet), today, progress);
        List<Problem> problems = new ArrayList<>(sheet.problems());
        problems.addAll(result.problems());
        return new ImportModel(sheet.file(), result, problems);
    }

    /** Returns how many records of each kind can be kept. */
    public Map<RecordKind, Integer> counts() {
        Map<RecordKind, Integer> counts = new EnumMap<>(RecordKind.class);
        result.drafts().forEach(draft -> counts.merge(draft.value().kind(), 1, Integer::sum));
        return counts;
    }

    public boolean hasSomethingToKeep() {
        return !result.drafts().isEmpty();
    }

    public long errors() {
        return problems.stream().filter(Problem::isError).count();
    }

    public long warnings() {
        return problems.size() - errors();
    }
}
