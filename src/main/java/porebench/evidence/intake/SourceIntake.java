package porebench.evidence.intake;

import java.time.LocalDate;
import java.util.List;
import porebench.method.Problem;
import porebench.record.RecordKind;
import porebench.record.Source;
import porebench.record.book.Records;
import porebench.record.source.SourceGate;
import porebench.record.source.SourceStory;

/** Checks a source from a file against what it was until now. */
final class SourceIntake {
    private SourceIntake() {}

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
