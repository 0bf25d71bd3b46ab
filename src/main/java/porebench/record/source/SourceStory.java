package porebench.record.source;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.book.Draft;
import porebench.record.book.Records;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.SourceId;

/**
 * The stones that a source was, told by its versions: whoever asks whether two things were made of the same stone asks this.
 *
 * <p>A change begins a new stone on the day it states, that day being the first of the new one; a correction says the same stone
 * better, and a day it states is the one that should have stood there; a withdrawal takes back the last change, so that all
 * versions since are of the stone from before. A version that says nothing of the kind, as all do that were kept before versions
 * said so, is another stone exactly when it does not read as the one before; no day is known of that, so that it counts whenever it is
 * asked.
 */
public final class SourceStory {
    private final List<Version<Source>> versions;
    private final List<SourcePeriod> periods;
    private final List<Withdrawal> withdrawals;
    private final Map<Integer, Integer> periodOf = new TreeMap<>();
    private final Map<Integer, Integer> saidFor = new TreeMap<>();

    /**
     * A change that was declared by mistake.
     *
     * @param period the stone that never was
     * @param by the version that took it back
     */
    public record Withdrawal(SourcePeriod period, Version<Source> by) {}

    private SourceStory(List<Version<Source>> versions) {
        this.versions = List.copyOf(versions);
        List<SourcePeriod> told = new ArrayList<>();
        List<Withdrawal> takenBack = new ArrayList<>();
        for (Version<Source> version : versions) {
            tell(version, told, takenBack);
        }
        this.periods = List.copyOf(told);
        this.withdrawals = List.copyOf(takenBack);
    }

    /**
     * Tells the story of a source.
     *
     * @param versions all its versions, the first one first, at least one
     */
    public static SourceStory of(List<Version<Source>> versions) {
        if (versions.isEmpty()) {
            throw new IllegalArgumentException("versions must hold the first one, but is empty");
        }
        return new SourceStory(versions);
    }

    /** Tells the story of a source of a lab book; empty when it has no such source. */
    public static Optional<SourceStory> of(Records book, SourceId id) {
        List<Version<Source>> versions = book.history(Source.class, id.text());
        return versions.isEmpty() ? Optional.empty() : Optional.of(of(versions));
    }

    private void tell(Version<Source> version, List<SourcePeriod> told, List<Withdrawal> takenBack) {
        Source source = version.value();
        int number = version.number();
        int last = told.size() - 1;
        boolean isNew = told.isEmpty()
                || source.is(SourceStep.CHANGED)
                || source.step().isEmpty()
                        && !source.isSameStoneAs(told.get(last).newest().value());
        if (isNew) {
            Optional<LocalDate> from = told.isEmpty() || source.is(SourceStep.CHANGED) ? source.changedOn() : none();
            told.add(new SourcePeriod(told.size() + 1, stone(source, told), from, version, version));
            saidFor.put(number, number);
        } else if (source.is(SourceStep.WITHDRAWN) && last > 0) {
            takenBack.add(new Withdrawal(told.remove(last), version));
            SourcePeriod before = told.get(last - 1);
            int same = saidFor(before.newest().number());
            periodOf.replaceAll((known, period) -> period > before.number() ? before.number() : period);
            takenBack.stream()
                    .filter(one -> one.by().equals(version))
                    .forEach(one -> versions.stream()
                            .map(Version::number)
                            .filter(each -> each >= one.period().begun().number() && each < number)
                            .forEach(each -> saidFor.put(each, same)));
            saidFor.put(number, same);
            told.set(last - 1, before.with(none(), version));
        } else {
            boolean isStep = source.step().isPresent();
            saidFor.put(number, isStep ? saidFor(told.get(last).newest().number()) : number);
            told.set(last, told.get(last).with(isStep ? source.changedOn() : none(), version));
        }
        periodOf.put(number, told.size());
    }

    private static int stone(Source source, List<SourcePeriod> told) {
        return told.stream()
                .filter(any -> source.step().isEmpty())
                .filter(before -> source.isSameStoneAs(before.newest().value()))
                .findFirst()
                .map(SourcePeriod::stone)
                .orElse(told.size() + 1);
    }

    private static Optional<LocalDate> none() {
        return Optional.empty();
    }

    /** Returns all versions, the first one first. */
    public List<Version<Source>> versions() {
        return versions;
    }

    /** Returns the name of the source. */
    public SourceId id() {
        return newest().value().id();
    }

    /** Returns the newest version. */
    public Version<Source> newest() {
        return versions.get(versions.size() - 1);
    }

    /** Returns the stones, the first one first; none that was withdrawn. */
    public List<SourcePeriod> periods() {
        return periods;
    }

    /** Returns the changes that were declared by mistake, in the order in which they were withdrawn. */
    public List<Withdrawal> withdrawals() {
        return withdrawals;
    }

    /** Returns the stone that was declared last, whether or not it has begun. */
    public SourcePeriod last() {
        return periods.get(periods.size() - 1);
    }

    /** Returns the stone in use on a day: the last that had begun by then, or else the first. */
    public SourcePeriod on(LocalDate day) {
        for (int i = periods.size() - 1; i > 0; i--) {
            if (periods.get(i).hasBegunBy(day)) {
                return periods.get(i);
            }
        }
        return periods.get(0);
    }

    /** Returns the stones that begin after a day, those that state one. */
    public List<SourcePeriod> toComeOn(LocalDate day) {
        return periods.stream().skip(1).filter(period -> period.isToComeOn(day)).toList();
    }

    /** Returns the stone that a version says; empty when there is no such version. */
    public Optional<SourcePeriod> of(int version) {
        return Optional.ofNullable(periodOf.get(version)).map(number -> periods.get(number - 1));
    }

    /**
     * Returns the stone of trials that name a version: the one the version says, or a later one that had begun by the day on which
     * the trial was made, because the change was written down only afterwards.
     *
     * @return empty when there is no such version
     */
    public Optional<SourcePeriod> of(int version, LocalDate day) {
        return of(version).map(said -> {
            SourcePeriod stone = said;
            for (SourcePeriod later : periods.subList(said.number(), periods.size())) {
                if (later.from().isEmpty() || later.isToComeOn(day)) {
                    break;
                }
                stone = later;
            }
            return stone;
        });
    }

    /**
     * Returns which stones some trials that name a version were made of.
     *
     * @param days the days on which they were made; where none is known the version alone says
     * @return the numbers of the stones; none when there is no such version
     */
    public Set<Integer> stones(int version, Collection<LocalDate> days) {
        Stream<SourcePeriod> made =
                days.isEmpty() ? of(version).stream() : days.stream().flatMap(day -> of(version, day).stream());
        return made.map(SourcePeriod::stone).collect(Collectors.toSet());
    }

    /**
     * Returns the version that says what another one does: that which a correction corrected, and itself otherwise.
     *
     * @param version one of the source's, or one that is not there, which stands for itself
     */
    public int saidFor(int version) {
        return saidFor.getOrDefault(version, version);
    }

    /** Returns the story as it would be told if a draft of the source were kept. */
    public SourceStory with(Draft draft, Stamp stamp) {
        List<Version<Source>> longer = new ArrayList<>(versions);
        longer.add(new Version<>((Source) draft.value(), newest().number() + 1, stamp));
        return of(longer);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SourceStory that && versions.equals(that.versions);
    }

    @Override
    public int hashCode() {
        return versions.hashCode();
    }

    @Override
    public String toString() {
        return periods.toString();
    }
}
