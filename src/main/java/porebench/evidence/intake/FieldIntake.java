package porebench.evidence.intake;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import porebench.evidence.field.FieldJudging;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.Records;
import porebench.record.id.ReadingId;

/** Holds the field readings that come in against the gate of all readings, and against each other. */
final class FieldIntake {
    private final Records book;
    private final Touched touched;
    private final FieldJudging gate;
    private final Set<ReadingId> unexplained = new HashSet<>();

    /**
     * Begins with nothing.
     *
     * @param touched what the lab book holds of what comes in
     * @param known finds what a record may name
     * @param now the day and time by the laboratory's clock
     */
    FieldIntake(
            Records book, Touched touched, BiFunction<RecordKind, String, Optional<Kept>> known, LocalDateTime now) {
        this.book = book;
        this.touched = touched;
        this.gate = new FieldJudging(book, known::apply, now);
    }

    /** Returns a reading with the reason for which it was kept, when it was and its row does not say it. */
    FieldReading asExplained(FieldReading reading) {
        return touched.value(FieldReading.class, RecordKind.FIELD_READING, reading.recordId())
                .filter(there -> there.keptBecause()
                        .filter(reason -> there.equals(reading.keptFor(Optional.of(reason))))
                        .isPresent())
                .orElse(reading);
    }

    /** Returns what is wrong or doubtful with a reading by itself and with what it names. */
    List<Problem> check(FieldReading reading) {
        List<Problem> problems = gate.check(reading);
        if (FieldJudging.needsReason(reading, problems)) {
            unexplained.add(reading.id());
        }
        return problems;
    }

    /** Returns the readings to be kept that are doubted and do not say why they are kept. */
    Set<ReadingId> doubted(List<Draft> drafts) {
        return drafts.stream()
                .map(Draft::value)
                .filter(FieldReading.class::isInstance)
                .map(value -> ((FieldReading) value).id())
                .filter(unexplained::contains)
                .collect(Collectors.toSet());
    }

    /** Returns what is to be kept with some of its readings kept for a reason. */
    static List<Draft> keptFor(List<Draft> drafts, Set<ReadingId> doubted, String reason) {
        return drafts.stream()
                .map(draft -> draft.value() instanceof FieldReading reading && doubted.contains(reading.id())
                        ? new Draft(reading.keptFor(Optional.of(reason)), draft.basedOn(), draft.cameIn())
                        : draft)
                .toList();
    }

    /**
     * Returns what can be kept once every reading was held against the others: of two of one load the one that comes in, or comes in
     * later, is refused.
     *
     * @param drafts what else can be kept, and the readings
     * @param readings the readings with their places
     * @param problems takes why one is refused
     */
    List<Draft> looked(List<Draft> drafts, Map<String, Incoming> readings, List<Problem> problems) {
        List<FieldReading> coming = drafts.stream()
                .map(Draft::value)
                .filter(FieldReading.class::isInstance)
                .map(FieldReading.class::cast)
                .toList();
        if (coming.isEmpty()) {
            return drafts;
        }
        Set<ReadingId> moved = coming.stream().map(FieldReading::id).collect(Collectors.toSet());
        Map<LocalDateTime, List<FieldReading>> there = new HashMap<>();
        onDaysOf(coming).stream()
                .filter(reading -> !moved.contains(reading.id()))
                .forEach(reading -> of(there, reading).add(reading));
        Set<String> refused = new HashSet<>();
        for (FieldReading reading : coming) {
            Optional<Problem> twin = FieldJudging.twice(reading, of(there, reading));
            twin.ifPresentOrElse(
                    problem -> {
                        refused.add(reading.recordId());
                        problems.add(problem.at(Objects.requireNonNull(readings.get(reading.recordId()))
                                .place()));
                    },
                    () -> of(there, reading).add(reading));
        }
        return refused.isEmpty()
                ? drafts
                : drafts.stream()
                        .filter(draft -> !(draft.value() instanceof FieldReading)
                                || !refused.contains(draft.value().recordId()))
                        .toList();
    }

    private static List<FieldReading> of(Map<LocalDateTime, List<FieldReading>> there, FieldReading reading) {
        return there.computeIfAbsent(reading.readAt().truncatedTo(ChronoUnit.MINUTES), any -> new ArrayList<>());
    }

    /** Returns the readings of the lab book on the days of those that come in: days that follow one another are asked for at once. */
    private List<FieldReading> onDaysOf(List<FieldReading> coming) {
        TreeSet<LocalDate> days = new TreeSet<>();
        coming.forEach(reading -> days.add(reading.readAt().toLocalDate()));
        List<FieldReading> found = new ArrayList<>();
        while (!days.isEmpty()) {
            LocalDate first = days.first();
            LocalDate end = first;
            while (days.remove(end)) {
                end = end.plusDays(1);
            }
            book.readingsBetween(first.atStartOfDay(), end.atStartOfDay())
                    .forEach(version -> found.add(version.value()));
        }
        return found;
    }
}
