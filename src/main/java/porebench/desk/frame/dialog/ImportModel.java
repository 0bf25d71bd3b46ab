package porebench.desk.frame.dialog;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.evidence.intake.Incoming;
import porebench.evidence.intake.Intake;
import porebench.evidence.intake.Sheet;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.id.ReadingId;
import porebench.record.id.TrialId;

/**
 * What CSV files would bring into the lab book together; nothing is kept before the person says so.
 *
 * @param file the names of the files
 * @param files how many they are
 * @param result what can be kept, and what stands there already
 * @param problems every problem, of the files and of its records against the lab book
 */
public record ImportModel(String file, int files, Intake.Result result, List<Problem> problems) {
    /** How many records are named; the preview says the rest. */
    private static final int NAMED = 12;

    public ImportModel {
        problems = List.copyOf(problems);
    }

    /**
     * Checks what was read from files against the lab book and against each other, in the order in which records need each other.
     *
     * @param now the day and time at which it is to be kept
     * @param progress hears how far it is
     */
    public static ImportModel of(LabBook book, List<Sheet<Kept>> sheets, LocalDateTime now, Progress progress) {
        List<Incoming> incoming = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Sheet<Kept> sheet : sheets) {
            incoming.addAll(Sheet.incoming(sheet));
            problems.addAll(sheet.problems());
        }
        Intake.Result result = Intake.check(book, incoming, now, progress);
        problems.addAll(result.problems());
        return new ImportModel(
                sheets.stream().map(Sheet::file).collect(Collectors.joining(", ")), sheets.size(), result, problems);
    }

    /** Returns the same import with what can be kept in another form. */
    ImportModel keeping(UnaryOperator<List<Draft>> drafts) {
        return new ImportModel(file, files, result.with(drafts.apply(result.drafts())), problems);
    }

    /** Returns the names of the trials and field readings that are kept only for a reason, in a few words. */
    public String doubtedNames() {
        List<String> names = Stream.concat(
                        result.doubted().stream().map(TrialId::text).sorted(),
                        result.doubtedReadings().stream().map(ReadingId::text).sorted())
                .limit(NAMED)
                .toList();
        return String.join(", ", names) + (result.doubts() > NAMED ? ", …" : "");
    }

    /** Returns the same import, its doubted records kept for a reason. */
    public ImportModel keptFor(String reason) {
        return new ImportModel(file, files, result.keptFor(reason), problems);
    }

    static String name(Path file) {
        return String.valueOf(file.getFileName());
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
