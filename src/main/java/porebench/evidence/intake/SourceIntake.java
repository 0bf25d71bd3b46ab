package porebench.evidence.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.book.Records;
import porebench.record.source.SourceGate;
import porebench.record.source.SourceStory;

/** Checks a source from a file against what it was until now. */
final class SourceIntake {
    private SourceIntake() {}

    /** Returns what is wrong with a measurement: by itself, or because nobody knows its source. */
    static List<Problem> check(
            SourceMeasurement measured, BiFunction<RecordKind, String, Optional<Kept>> known, LocalDate today) {
        List<Problem> problems = new ArrayList<>(measured.check(today));
        if (known.apply(RecordKind.SOURCE, measured.sourceId().text()).isEmpty()) {
            problems.add(Problem.error(
                    "sourceId",
                    "measurement.unknown-source",
                    measured.id().text(),
                    measured.sourceId().text()));
        }
        return problems;
    }

    /** Returns what is wrong or doubtful about another version of a source; a new source may be whatever its file says. */
    static List<Problem> check(Records book, Touched touched, Source source, LocalDate today) {
        boolean isOther = touched.value(Source.class, RecordKind.SOURCE, source.recordId())
                .filter(there -> !there.equals(source))
                .isPresent();
        return isOther
                ? SourceStory.of(book, source.id())
                        .map(story -> SourceGate.check(story, source, today))
                        .orElse(List.of())
                : List.of();
    }
}
