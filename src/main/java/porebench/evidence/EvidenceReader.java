package porebench.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.method.Profile;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.Kept;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.Records;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/** Reads the evidence of mixes out of a lab book's records, each kind of record once for all mixes. */
public final class EvidenceReader {
    private final Records book;
    private final Map<SourceId, Version<Source>> sources;
    private final Map<MeterId, Version<Meter>> meters;
    private final Map<MeterId, List<Version<MeterCalibration>>> calibrations;
    private final LaboratoryEquipment equipment;
    private final Map<Profile, Map<MeterId, MeterStory>> stories = new HashMap<>();
    private final Map<Class<?>, Map<String, List<Version<?>>>> histories = new HashMap<>();
    private final Map<MixId, List<Version<Determination>>> determinations;
    private final Map<DeterminationId, List<Version<Trial>>> trials;
    private final Map<MixId, List<Version<FactorIssue>>> issues;

    public EvidenceReader(Records book) {
        this.book = book;
        this.sources = book.latest(Source.class).stream()
                .collect(Collectors.toMap(version -> version.value().id(), Function.identity()));
        this.meters = book.latest(Meter.class).stream()
                .collect(Collectors.toMap(version -> version.value().id(), Function.identity()));
        this.calibrations = grouped(MeterCalibration.class, MeterCalibration::meterId);
        this.equipment = LaboratoryEquipment.of(book);
        this.determinations = grouped(Determination.class, Determination::mixId);
        this.trials = grouped(Trial.class, Trial::determinationId);
        this.issues = grouped(FactorIssue.class, FactorIssue::mixId);
    }

    private <T extends Kept, K> Map<K, List<Version<T>>> grouped(Class<T> kind, Function<T, K> key) {
        return book.latest(kind).stream().collect(Collectors.groupingBy(version -> key.apply(version.value())));
    }

    public Evidence read(Version<MixDesign> mix) {
        Profile profile = Evidence.profileOf(book, mix.value().profileId());
        List<JudgedDetermination> judged = determinations
                .getOrDefault(mix.value().id(), List.of())
                .stream()
                .sorted(Comparator.comparing((Version<Determination> version) ->
                                version.value().openedOn())
                        .thenComparingInt(version -> version.value().id().text().length())
                        .thenComparing(version -> version.value().id()))
                .map(determination -> judge(determination, mix, profile))
                .toList();
        List<Version<FactorIssue>> issued = issues.getOrDefault(mix.value().id(), List.of()).stream()
                .sorted(Comparator.comparingInt(version -> version.value().revision()))
                .toList();
        return new Evidence(
                mix,
                profile,
                mix.value().sources().stream()
                        .sorted()
                        .filter(sources::containsKey)
                        .map(sources::get)
                        .toList(),
                meters,
                stories(profile),
                equipment,
                judged,
                issued,
                bases(issued),
                made(judged));
    }

    private Map<Integer, Evidence.Basis> bases(List<Version<FactorIssue>> issued) {
        Map<Integer, Evidence.Basis> bases = new HashMap<>();
        for (Version<FactorIssue> version : issued) {
            FactorIssue issue = version.value();
            if (issue.isIssue()) {
                then(MixDesign.class, issue.mixId().text(), issue.mixVersion())
                        .ifPresent(mix -> bases.put(issue.revision(), basis(mix, issue.sourceVersions())));
            }
        }
        return bases;
    }

    private Map<DeterminationId, Evidence.Basis> made(List<JudgedDetermination> judged) {
        Map<DeterminationId, Evidence.Basis> made = new HashMap<>();
        for (JudgedDetermination one : judged) {
            Determination determination = one.determination().value();
            then(MixDesign.class, determination.mixId().text(), determination.mixVersion())
                    .ifPresent(mix -> made.put(determination.id(), basis(mix, determination.sourceVersions())));
        }
        return made;
    }

    private JudgedDetermination judge(Version<Determination> determination, Version<MixDesign> today, Profile profile) {
        int number = determination.value().mixVersion();
        Optional<MixDesign> mix = number == today.number()
                ? Optional.of(today.value())
                : then(MixDesign.class, today.value().recordId(), number);
        List<JudgedTrial> judged = trials.getOrDefault(determination.value().id(), List.of()).stream()
                .map(trial -> judge(trial, mix, profile))
                .toList();
        double division = MeterScale.of(judged, meters).divisionPercent().doubleValue();
        return JudgedDetermination.of(determination, judged, division, profile);
    }

    private JudgedTrial judge(Version<Trial> trial, Optional<MixDesign> mix, Profile profile) {
        return Optional.ofNullable(stories(profile).get(trial.value().meterId()))
                .map(story -> JudgedTrial.of(trial, mix, story))
                .orElseGet(() -> JudgedTrial.of(trial, mix, Optional.empty(), profile));
    }

    /** Returns the story of every meter by a profile's limits, told once for all mixes of that profile. */
    private Map<MeterId, MeterStory> stories(Profile profile) {
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

    private Evidence.Basis basis(MixDesign mix, Map<SourceId, Integer> versions) {
        List<Source> found = new ArrayList<>();
        List<SourceId> lost = new ArrayList<>();
        versions.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> then(Source.class, entry.getKey().text(), entry.getValue())
                        .ifPresentOrElse(found::add, () -> lost.add(entry.getKey())));
        return new Evidence.Basis(mix, found, lost);
    }

    private <T extends Kept> Optional<T> then(Class<T> kind, String recordId, int number) {
        return histories
                .computeIfAbsent(kind, any -> new HashMap<>())
                .computeIfAbsent(recordId, id -> List.copyOf(book.history(kind, id)))
                .stream()
                .filter(version -> version.number() == number)
                .map(version -> kind.cast(version.value()))
                .findFirst();
    }
}
