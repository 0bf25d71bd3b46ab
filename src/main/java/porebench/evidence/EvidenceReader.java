package porebench.evidence;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.method.Profile;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.Kept;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.book.Belonging;
import porebench.record.book.KeptSince;
import porebench.record.book.Progress;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.source.SourceStory;

/**
 * Reads the evidence of mixes out of a lab book's records: of a few, asking for what belongs to each, or of all, each kind of
 * record once. Meters, calibrations and equipment are read once for all of them.
 */
public final class EvidenceReader {
    /** So many mixes are read at a time: asking takes little beside reading then, and they are soon forgotten again. */
    private static final int GROUP = 100;

    private final Records book;
    private final Function<MixId, List<Version<Determination>>> determinations;
    private final Function<DeterminationId, List<Version<Trial>>> trials;
    private final Function<MixId, List<Version<FactorIssue>>> issues;
    private final Map<SourceId, Optional<SourceStory>> sources = new HashMap<>();
    private final Map<List<?>, Optional<?>> before = new HashMap<>();
    private final Map<String, Profile> profiles = new HashMap<>();
    private final Bench bench;

    /** The meters with their calibrations, and the equipment, as they were read. */
    private static final class Bench {
        private final Map<MeterId, Version<Meter>> meters;
        private final Map<MeterId, List<Version<MeterCalibration>>> calibrations;
        private final LaboratoryEquipment equipment;
        private final Map<Profile, Map<MeterId, MeterStory>> stories = new HashMap<>();

        Bench(Records book) {
            this.meters = book.latest(Meter.class).stream()
                    .collect(Collectors.toMap(version -> version.value().id(), Function.identity()));
            this.calibrations = grouped(book, MeterCalibration.class, MeterCalibration::meterId);
            this.equipment = LaboratoryEquipment.of(book);
        }

        /** Returns the story of every meter by a profile's limits, told once for all mixes of that profile. */
        Map<MeterId, MeterStory> stories(Profile profile) {
            return stories.computeIfAbsent(
                    profile,
                    any -> meters.entrySet().stream()
                            .collect(Collectors.toMap(
                                    Map.Entry::getKey,
                                    entry -> MeterStory.of(
                                            entry.getValue(),
                                            calibrations.getOrDefault(entry.getKey(), List.of()),
                                            profile))));
        }
    }

    private EvidenceReader(
            Records book,
            Bench bench,
            Function<MixId, List<Version<Determination>>> determinations,
            Function<DeterminationId, List<Version<Trial>>> trials,
            Function<MixId, List<Version<FactorIssue>>> issues) {
        this.book = book;
        this.bench = bench;
        this.determinations = determinations;
        this.trials = trials;
        this.issues = issues;
    }

    /** Makes one that asks for the records of each mix when it is read. */
    public static EvidenceReader asking(Records book) {
        return asking(book, new Bench(book));
    }

    private static EvidenceReader asking(Records book, Bench bench) {
        return new EvidenceReader(
                book,
                bench,
                mix -> book.latestOf(Belonging.DETERMINATIONS_OF_MIX, mix.text()),
                determination -> book.latestOf(Belonging.TRIALS_OF_DETERMINATION, determination.text()),
                mix -> book.latestOf(Belonging.ISSUES_OF_MIX, mix.text()));
    }

    /** Makes one that reads the records of all mixes now. */
    static EvidenceReader ofAll(Records book) {
        return new EvidenceReader(
                book,
                new Bench(book),
                all(grouped(book, Determination.class, Determination::mixId)),
                all(grouped(book, Trial.class, Trial::determinationId)),
                all(grouped(book, FactorIssue.class, FactorIssue::mixId)));
    }

    /**
     * Returns one that asks for the same and knows what was kept since; meters, calibrations and equipment are read again only when
     * any of them was.
     */
    public EvidenceReader after(KeptSince touched) {
        boolean isSameBench = Collections.disjoint(
                touched.kinds(), List.of(RecordKind.METER, RecordKind.METER_CALIBRATION, RecordKind.EQUIPMENT));
        return asking(book, isSameBench ? bench : new Bench(book));
    }

    /** Returns whether it read meters, calibrations and equipment at the same time as another. */
    public boolean hasBenchOf(EvidenceReader other) {
        return bench == other.bench;
    }

    /** Returns the laboratory's equipment with what held on earlier days. */
    public LaboratoryEquipment equipment() {
        return bench.equipment;
    }

    private static <K, T> Function<K, List<T>> all(Map<K, List<T>> known) {
        return key -> known.getOrDefault(key, List.of());
    }

    private static <T extends Kept, K> Map<K, List<Version<T>>> grouped(
            Records book, Class<T> kind, Function<T, K> key) {
        return grouped(book.latest(kind), key);
    }

    private static <T extends Kept, K> Map<K, List<Version<T>>> grouped(List<Version<T>> versions, Function<T, K> key) {
        return versions.stream().collect(Collectors.groupingBy(version -> key.apply(version.value())));
    }

    /**
     * Reads the evidence of some mixes, in their order, and hands out each as soon as it is read; what belongs to them is asked for
     * together. A mix that is not there is left out.
     */
    public void readEach(Collection<MixId> mixes, Consumer<Evidence> taker) {
        readEach(mixes, Progress.UNHEARD, taker);
    }

    /** Reads the evidence of some mixes, as {@link #readEach(Collection, Consumer)}, and says how far it is. */
    public void readEach(Collection<MixId> mixes, Progress progress, Consumer<Evidence> taker) {
        List<String> names = mixes.stream().map(MixId::text).toList();
        long[] done = {0};
        Consumer<Evidence> told = evidence -> {
            progress.at(Progress.Stage.WORKING_OUT, done[0]++, names.size());
            taker.accept(evidence);
        };
        for (int from = 0; from < names.size(); from += GROUP) {
            readGroup(names.subList(from, Math.min(names.size(), from + GROUP)), told);
        }
    }

    private void readGroup(List<String> names, Consumer<Evidence> taker) {
        Map<String, Version<MixDesign>> mixes = book.latest(MixDesign.class, names);
        List<Version<Determination>> made = book.latestOf(Belonging.DETERMINATIONS_OF_MIX, names);
        List<String> determinationNames =
                made.stream().map(version -> version.value().recordId()).toList();
        EvidenceReader ofGroup = new EvidenceReader(
                book,
                bench,
                all(grouped(made, Determination::mixId)),
                all(grouped(
                        book.latestOf(Belonging.TRIALS_OF_DETERMINATION, determinationNames), Trial::determinationId)),
                all(grouped(book.latestOf(Belonging.ISSUES_OF_MIX, names), FactorIssue::mixId)));
        ofGroup.sources.putAll(sources);
        ofGroup.before.putAll(before);
        ofGroup.profiles.putAll(profiles);
        names.stream()
                .flatMap(name -> Optional.ofNullable(mixes.get(name)).stream())
                .map(ofGroup::read)
                .forEach(taker);
        sources.putAll(ofGroup.sources);
        before.putAll(ofGroup.before);
        profiles.putAll(ofGroup.profiles);
    }

    private Optional<SourceStory> source(SourceId id) {
        return sources.computeIfAbsent(id, any -> SourceStory.of(book, id));
    }

    public Evidence read(Version<MixDesign> mix) {
        // The versions of one mix are asked for again and again, those of another never.
        before.keySet().removeIf(key -> key.get(0).equals(MixDesign.class));
        before.put(List.of(MixDesign.class, mix.value().recordId(), mix.number()), Optional.of(mix.value()));
        Profile profile = profile(mix);
        List<JudgedDetermination> judged = determinations.apply(mix.value().id()).stream()
                .sorted(Comparator.comparing((Version<Determination> version) ->
                                version.value().openedOn())
                        .thenComparingInt(version -> version.value().id().text().length())
                        .thenComparing(version -> version.value().id()))
                .map(determination -> judge(determination, mix, profile))
                .toList();
        List<Version<FactorIssue>> issued = issues.apply(mix.value().id()).stream()
                .sorted(Comparator.comparingInt(version -> version.value().revision()))
                .toList();
        return new Evidence(
                mix,
                profile,
                mix.value().sources().stream()
                        .sorted()
                        .flatMap(id -> source(id).stream())
                        .toList(),
                bench.meters,
                bench.stories(profile),
                bench.equipment,
                judged,
                issued,
                bases(issued, judged),
                made(judged),
                firstKept(mix));
    }

    private Instant firstKept(Version<MixDesign> mix) {
        Optional<Version<MixDesign>> first = mix.number() == 1
                ? Optional.of(mix)
                : book.version(MixDesign.class, mix.value().recordId(), 1);
        return first.orElse(mix).stamp().at();
    }

    private Map<Integer, Basis> bases(List<Version<FactorIssue>> issued, List<JudgedDetermination> judged) {
        Map<Integer, Basis> bases = new HashMap<>();
        for (Version<FactorIssue> version : issued) {
            FactorIssue issue = version.value();
            if (issue.isIssue()) {
                then(MixDesign.class, issue.mixId().text(), issue.mixVersion())
                        .ifPresent(mix -> bases.put(
                                issue.revision(),
                                basis(mix, issue.sourceVersions(), days(issue.determinationId(), judged))));
            }
        }
        return bases;
    }

    private Map<DeterminationId, Basis> made(List<JudgedDetermination> judged) {
        Map<DeterminationId, Basis> made = new HashMap<>();
        for (JudgedDetermination one : judged) {
            Determination determination = one.determination().value();
            then(MixDesign.class, determination.mixId().text(), determination.mixVersion())
                    .ifPresent(
                            mix -> made.put(determination.id(), basis(mix, determination.sourceVersions(), days(one))));
        }
        return made;
    }

    private Profile profile(Version<MixDesign> mix) {
        return profiles.computeIfAbsent(mix.value().profileId(), id -> Evidence.profileOf(book, id));
    }

    /**
     * Judges trials of a determination, each by itself, with the mix design as it was when the determination was begun.
     *
     * @param today the newest version of its mix, which names the profile
     */
    public List<JudgedTrial> judge(Determination determination, Version<MixDesign> today, List<Version<Trial>> some) {
        Profile profile = profile(today);
        Optional<MixDesign> mix = then(MixDesign.class, today.value().recordId(), determination.mixVersion());
        return some.stream().map(trial -> judge(trial, mix, profile)).toList();
    }

    private JudgedDetermination judge(Version<Determination> determination, Version<MixDesign> today, Profile profile) {
        List<JudgedTrial> judged = JudgedDetermination.inCompany(judge(
                determination.value(), today, trials.apply(determination.value().id())));
        double division = MeterScale.of(judged, bench.meters).divisionPercent().doubleValue();
        return JudgedDetermination.of(determination, judged, division, profile);
    }

    private JudgedTrial judge(Version<Trial> trial, Optional<MixDesign> mix, Profile profile) {
        return Optional.ofNullable(bench.stories(profile).get(trial.value().meterId()))
                .map(story -> JudgedTrial.of(trial, mix, story))
                .orElseGet(() -> JudgedTrial.of(trial, mix, Optional.empty(), profile));
    }

    private static Set<LocalDate> days(DeterminationId id, List<JudgedDetermination> judged) {
        return judged.stream()
                .filter(one -> one.determination().value().id().equals(id))
                .findFirst()
                .map(EvidenceReader::days)
                .orElse(Set.of());
    }

    /** Returns the days on which the trials of a determination that count were made. */
    private static Set<LocalDate> days(JudgedDetermination judged) {
        return judged.trials().stream()
                .filter(JudgedTrial::counts)
                .map(trial -> trial.trial().value().testedAt().toLocalDate())
                .collect(Collectors.toSet());
    }

    private Basis basis(MixDesign mix, Map<SourceId, Integer> versions, Set<LocalDate> days) {
        Map<SourceId, SourceStory> stories = new HashMap<>();
        versions.forEach((id, version) ->
                source(id).filter(story -> story.of(version).isPresent()).ifPresent(story -> stories.put(id, story)));
        return new Basis(mix, versions, stories, days);
    }

    private <T extends Kept> Optional<T> then(Class<T> kind, String recordId, int number) {
        return before.computeIfAbsent(
                        List.of(kind, recordId, number),
                        any -> book.version(kind, recordId, number).map(Version::value))
                .map(kind::cast);
    }
}
