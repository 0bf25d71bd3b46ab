package porebench.evidence.field;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import porebench.method.Answer;
import porebench.method.Dates;
import porebench.method.Problem;
import porebench.method.air.AcceptanceLimits;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** The one gate that a field reading passes, from a form, a file or the command line, and that a guard band passes. */
public final class FieldJudging {
    /** A guard band is at most so many standard uncertainties wide: more is a slip of the pen. Common practice, no source. */
    public static final BigDecimal MOST_GUARD = BigDecimal.TEN;

    private final Records book;
    private final BiFunction<RecordKind, String, Optional<? extends Kept>> known;
    private final LocalDateTime now;
    private final Map<MixId, Optional<LocalDate>> firstDays = new HashMap<>();

    /**
     * Makes a gate.
     *
     * @param book the lab book
     * @param known finds what a reading may name, in the lab book or on its way there
     * @param now the day and time by the laboratory's clock
     */
    public FieldJudging(
            Records book, BiFunction<RecordKind, String, Optional<? extends Kept>> known, LocalDateTime now) {
        this.book = book;
        this.known = known;
        this.now = now;
    }

    /** Makes the gate of a lab book to which nothing else is on its way. */
    public static FieldJudging of(Records book, LocalDateTime now) {
        Map<List<String>, Optional<? extends Kept>> asked = new HashMap<>();
        return new FieldJudging(
                book,
                (kind, id) -> Objects.requireNonNull(asked.computeIfAbsent(
                        List.of(kind.symbol(), id),
                        any -> book.latest(kind.type(), id).map(Version::value))),
                now);
    }

    /**
     * Returns everything that is wrong or doubtful with a reading by itself and with what it names.
     *
     * <p>A doubt is a warning; {@link #needsReason} says whether the reading may be kept with it.
     */
    public List<Problem> check(FieldReading reading) {
        List<Problem> problems = new ArrayList<>(reading.check(now));
        if (known.apply(RecordKind.MIX, reading.mixId().text()).isEmpty()) {
            problems.add(Problem.error(
                    "mixId",
                    "import.unknown-mix",
                    reading.kind().word(),
                    reading.recordId(),
                    reading.mixId().text()));
        }
        reading.meterId()
                .ifPresent(meter -> known.apply(RecordKind.METER, meter.text())
                        .map(Meter.class::cast)
                        .ifPresentOrElse(
                                there -> reading.checkScale(there).ifPresent(problems::add),
                                () -> problems.add(Problem.error(
                                        "meter", "field.unknown-meter", reading.recordId(), meter.text()))));
        firstDays
                .computeIfAbsent(reading.mixId(), this::firstDay)
                .filter(first -> reading.readAt().toLocalDate().isBefore(first))
                .ifPresent(first -> problems.add(Problem.warning(
                        "readAt",
                        "field.before-mix",
                        reading.recordId(),
                        Dates.minute(reading.readAt()),
                        reading.mixId().text(),
                        first.toString())));
        return problems;
    }

    /** Returns whether a reading with these problems may be kept only with a reason, and states none. */
    public static boolean needsReason(FieldReading reading, List<Problem> problems) {
        return reading.keptBecause().filter(reason -> !reason.isBlank()).isEmpty()
                && problems.stream().anyMatch(problem -> !problem.isError());
    }

    /**
     * Returns why a reading is a second one of the same load: another of the same mix, truck and minute is there. Struck ones are not
     * counted, nor are two on different meters of the laboratory.
     *
     * @param others the readings it stands beside; itself among them does no harm
     */
    public static Optional<Problem> twice(FieldReading reading, Collection<FieldReading> others) {
        return others.stream()
                .filter(other ->
                        reading.counts() && other.counts() && !other.id().equals(reading.id()))
                .filter(other -> load(other).equals(load(reading)))
                .filter(other -> other.meterId().isEmpty()
                        || reading.meterId().isEmpty()
                        || other.meterId().equals(reading.meterId()))
                .findFirst()
                .map(other -> Problem.error(
                        "readAt",
                        "field.twice",
                        reading.recordId(),
                        other.recordId(),
                        reading.mixId().text(),
                        reading.truck().isBlank() ? "-" : reading.truck().strip(),
                        Dates.minute(reading.readAt())));
    }

    /** Returns why a reading is a second one of the same load beside those in the lab book. */
    public Optional<Problem> twice(FieldReading reading) {
        LocalDateTime minute = reading.readAt().truncatedTo(ChronoUnit.MINUTES);
        return twice(
                reading,
                book.readingsBetween(minute, minute.plusMinutes(1)).stream()
                        .map(Version::value)
                        .toList());
    }

    private static List<Object> load(FieldReading reading) {
        return List.of(
                reading.mixId(), reading.truck().strip(), reading.readAt().truncatedTo(ChronoUnit.MINUTES));
    }

    /** Returns what is wrong with the width of a guard band, in standard uncertainties; empty where nothing is. */
    public static Optional<Problem> checkGuard(BigDecimal k) {
        return k.signum() > 0 && k.compareTo(MOST_GUARD) <= 0
                ? Optional.empty()
                : Optional.of(Problem.error("guard", "field.guard-out-of-range", k, MOST_GUARD));
    }

    /**
     * Returns between which limits a load is accepted, or why the guard band cannot be laid.
     *
     * @param plain the limits of the tolerance
     * @param k how many standard uncertainties wide the guard band is; empty for none
     * @param standard the standard uncertainty of the air, in % air; empty where it is not known
     */
    static Answer<AcceptanceLimits> limits(
            FieldReading reading, AcceptanceLimits plain, Optional<BigDecimal> k, OptionalDouble standard) {
        if (k.isEmpty()) {
            return Answer.of(plain, List.of());
        }
        if (standard.isEmpty()) {
            return Answer.refused(
                    List.of(Problem.error("guard", "field.guard-without-uncertainty", reading.recordId())));
        }
        return plain.guarded(k.get().doubleValue(), standard.getAsDouble())
                .map(guarded -> Answer.of(guarded, List.of()))
                .orElseGet(() -> Answer.refused(List.of(Problem.error(
                        "guard",
                        "field.guard-too-wide",
                        reading.recordId(),
                        k.get(),
                        standard.getAsDouble(),
                        plain.highPercent().subtract(plain.lowPercent()).doubleValue() / 2))));
    }

    /**
     * Returns the first day on which the lab book knows of a mix: that of its oldest determination or revision, or the one before its
     * design was kept, since the laboratory's day may be behind that of UTC. Empty for a mix that is only on its way.
     */
    private Optional<LocalDate> firstDay(MixId mix) {
        return book.version(MixDesign.class, mix.text(), 1)
                .map(first -> Stream.of(
                                Stream.of(first.stamp()
                                        .at()
                                        .atOffset(ZoneOffset.UTC)
                                        .toLocalDate()
                                        .minusDays(1)),
                                book.latestOf(Belonging.DETERMINATIONS_OF_MIX, mix.text()).stream()
                                        .map(version -> version.value().openedOn()),
                                book.latestOf(Belonging.ISSUES_OF_MIX, mix.text()).stream()
                                        .map(version -> version.value().inForceFrom()))
                        .flatMap(days -> days)
                        .min(LocalDate::compareTo)
                        .orElseThrow());
    }
}
