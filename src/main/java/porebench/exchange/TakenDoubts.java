package porebench.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.record.TakenDoubt;
import porebench.record.id.TrialId;

/**
 * The column {@code doubts_taken_on}: one doubt after the other with a semicolon between, each as trial, code, words, person
 * and reason with a bar between; the trial is empty when the doubt is about the determination.
 */
final class TakenDoubts {
    private static final String COLUMN = "doubts_taken_on";
    private static final int PARTS = 5;

    private TakenDoubts() {}

    static List<TakenDoubt> read(Entry entry) {
        List<TakenDoubt> doubts = new ArrayList<>();
        String all = entry.text(COLUMN);
        for (String one : all.isBlank() ? new String[0] : all.split(";", -1)) {
            List<String> parts =
                    Stream.of(one.split("\\|", -1)).map(Escapes::read).toList();
            if (parts.size() != PARTS
                    || parts.get(1).isBlank()
                    || parts.get(3).isBlank()
                    || parts.get(4).isBlank()) {
                entry.error(COLUMN, "csv.not-doubts", Findings.quoted(one));
                continue;
            }
            doubts.add(new TakenDoubt(
                    Optional.of(parts.get(0).strip())
                            .filter(trial -> !trial.isEmpty())
                            .map(TrialId::new),
                    parts.get(1).strip(),
                    parts.get(2),
                    parts.get(3),
                    parts.get(4)));
        }
        return doubts;
    }

    static String written(List<TakenDoubt> doubts) {
        return doubts.stream()
                .map(doubt -> Stream.of(
                                doubt.trial().map(TrialId::text).orElse(""),
                                doubt.code(),
                                doubt.words(),
                                doubt.by(),
                                doubt.reason())
                        .map(Escapes::written)
                        .collect(Collectors.joining("|")))
                .collect(Collectors.joining(";"));
    }
}
