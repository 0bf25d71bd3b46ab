package porebench.evidence.field;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import porebench.evidence.Evidence;
import porebench.evidence.EvidenceAsKnown;
import porebench.evidence.LaboratoryScatter;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * What is made of field readings, as a lab book stands: each is corrected with the factor in force at its time, reported, judged, and
 * told beside what was said of it when it was first kept.
 *
 * <p>It reads the readings of a span of days or of one mix, never all, and of each mix what is known of it, once. It is for one question;
 * nothing in it may be shared between threads.
 */
public final class FieldReadings {
    private final Records book;
    private final Function<MixId, Optional<Evidence>> evidence;
    private final Supplier<LaboratoryScatter> scatter;
    private final Optional<BigDecimal> guard;
    private final Map<MixId, Optional<MixAir>> mixes = new HashMap<>();

    /**
     * Asks a lab book.
     *
     * @param evidence gives everything known of a mix; empty for a mix that is not there
     * @param scatter how trials scatter in the laboratory; asked once a factor's uncertainty is needed
     * @param guard how many standard uncertainties wide a guard band is laid; empty for none
     * @throws IllegalArgumentException if {@link FieldJudging#checkGuard} has something against the guard band
     */
    public FieldReadings(
            Records book,
            Function<MixId, Optional<Evidence>> evidence,
            Supplier<LaboratoryScatter> scatter,
            Optional<BigDecimal> guard) {
        if (guard.flatMap(FieldJudging::checkGuard).isPresent()) {
            throw new IllegalArgumentException(
                    "guard must be from 0 to " + FieldJudging.MOST_GUARD + ", but is " + guard.get());
        }
        this.book = book;
        this.evidence = evidence;
        this.scatter = scatter;
        this.guard = guard;
    }

    /**
     * Returns the readings of some days, in the order of their times.
     *
     * @param from the first day
     * @param to the last day
     */
    public List<FieldOutcome> between(LocalDate from, LocalDate to) {
        return ofKept(book.readingsBetween(from.atStartOfDay(), to.plusDays(1).atStartOfDay()));
    }

    /**
     * Returns the readings of one mix of some days, in the order of their times.
     *
     * @param from the first day; empty for all before the last one
     * @param to the last day; empty for all after the first one
     */
    public List<FieldOutcome> ofMix(MixId mix, Optional<LocalDate> from, Optional<LocalDate> to) {
        return ofKept(book.latestOf(Belonging.READINGS_OF_MIX, mix.text()).stream()
                .filter(version -> {
                    LocalDate day = version.value().readAt().toLocalDate();
                    return from.filter(day::isBefore).isEmpty()
                            && to.filter(day::isAfter).isEmpty();
                })
                .toList());
    }

    /** Returns what would be made of readings that are not kept, in the order of their times; of a mix that is not there nothing. */
    public List<FieldOutcome> notKept(Collection<FieldReading> readings) {
        return readings.stream()
                .flatMap(reading -> mix(reading.mixId()).stream()
                        .map(mix -> new FieldOutcome(
                                reading, Optional.empty(), mix.now(reading, Optional.empty()), Optional.empty())))
                .sorted(BY_TIME)
                .toList();
    }

    private static final Comparator<FieldOutcome> BY_TIME = Comparator.comparing(
                    (FieldOutcome outcome) -> outcome.reading().readAt())
            .thenComparing(outcome -> outcome.reading().id());

    private List<FieldOutcome> ofKept(List<Version<FieldReading>> kept) {
        Map<String, Version<FieldReading>> firsts = firsts(kept);
        List<FieldOutcome> outcomes = new ArrayList<>();
        for (Version<FieldReading> version : kept) {
            mix(version.value().mixId())
                    .ifPresent(mix -> outcomes.add(outcome(
                            mix, version, firsts.getOrDefault(version.value().recordId(), version))));
        }
        outcomes.sort(BY_TIME);
        return List.copyOf(outcomes);
    }

    /** Returns the first versions of those that were corrected since, by name, read at one time. */
    private Map<String, Version<FieldReading>> firsts(List<Version<FieldReading>> kept) {
        List<String> corrected = kept.stream()
                .filter(version -> version.number() > 1)
                .map(version -> version.value().recordId())
                .toList();
        Map<String, Version<FieldReading>> firsts = new HashMap<>();
        book.histories(FieldReading.class, corrected)
                .forEach((id, versions) -> versions.stream()
                        .filter(version -> version.number() == 1)
                        .forEach(first -> firsts.put(id, first)));
        return firsts;
    }

    private FieldOutcome outcome(MixAir mix, Version<FieldReading> version, Version<FieldReading> first) {
        FieldReading reading = version.value();
        Instant keptAt = first.stamp().at();
        FieldFinding now = mix.now(reading, Optional.of(keptAt));
        Optional<FieldFinding> then = mix(first.value().mixId()).map(one -> one.then(first.value(), keptAt));
        return new FieldOutcome(
                reading,
                Optional.of(version),
                now,
                then.filter(one -> !one.saysTheSameAs(now))
                        .map(one -> new FieldOutcome.Said(keptAt, first.value(), one)));
    }

    private Optional<MixAir> mix(MixId id) {
        return Objects.requireNonNull(mixes.computeIfAbsent(
                id, any -> evidence.apply(id).map(one -> new MixAir(new EvidenceAsKnown(one, book), scatter, guard))));
    }

    /** Returns what is not in the uncertainties of some airs, each once. */
    public static List<Problem> omissions(List<FieldOutcome> outcomes) {
        return outcomes.stream()
                .flatMap(outcome -> outcome.air().stream())
                .flatMap(air -> air.budget().stream())
                .flatMap(budget -> budget.omissions().stream())
                .distinct()
                .map(omission -> omission.asProblem())
                .toList();
    }
}
