package porebench.desk.field;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.desk.Reading;
import porebench.evidence.field.FieldJudging;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.RecordKind;
import porebench.record.book.Belonging;
import porebench.record.book.Version;

/** What the page asks of the records: the one place where it meets what is made of readings. */
final class FieldRows {
    private FieldRows() {}

    /** Returns the readings that are asked for, the newest first. */
    static List<FieldLine> of(Reading seen, FieldAsked asked) {
        List<String> mixes = asked.mix()
                .map(mix -> List.of(mix.text()))
                .orElseGet(() -> seen.book().ids(RecordKind.MIX));
        return seen.book().latestOf(Belonging.READINGS_OF_MIX, mixes).stream()
                .filter(version -> isWithin(version.value().readAt().toLocalDate(), asked))
                .sorted(Comparator.comparing((Version<FieldReading> version) ->
                                version.value().readAt())
                        .thenComparing(version -> version.value().recordId())
                        .reversed())
                .map(version -> new FieldLine(version, Optional.empty(), Optional.empty(), List.of()))
                .toList();
    }

    private static boolean isWithin(LocalDate day, FieldAsked asked) {
        return !day.isBefore(asked.first()) && !day.isAfter(asked.last());
    }

    /** Returns what a reading that was typed comes to, and what is against it. */
    static FieldGate.Held held(Reading seen, FieldGate gate) {
        FieldReading reading = gate.isNew()
                ? gate.reading()
                        .named(FieldNames.free(
                                gate.reading(),
                                name -> seen.book()
                                        .latest(FieldReading.class, name)
                                        .isPresent()))
                : gate.reading();
        FieldJudging judging = FieldJudging.of(seen.book(), gate.now());
        List<Problem> problems = new ArrayList<>(judging.check(reading));
        judging.twice(reading).ifPresent(problems::add);
        return new FieldGate.Held(reading, problems, Optional.empty(), List.of());
    }
}
