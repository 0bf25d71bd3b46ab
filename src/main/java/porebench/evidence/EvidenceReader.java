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
import porebench.method.profile.Profiles;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Volume;
import porebench.record.ChangeDecision;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.Kept;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.book.Belonging;
import porebench.record.book.KeptSince;
import porebench.record.book.Progress;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
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

    static final Comparator<Version<FactorIssue>> BY_REVISION =
            Comparator.comparingInt(version -> version.value().revision());

    private final Records book;
    private final Function<MixId, List<Version<Determination>>> determinations;
    private final Function<DeterminationId, List<Version<Trial>>> trials;
    private final Function<MixId, List<Version<FactorIssue>>> issues;
    private final Function<MixId, List<Version<FactorProposal>>> proposals;
    private final Function<MixId, List<Version<ChangeDecision>>> decisions;
    private final ReportedReading reported;
    private final ReadStones stones;
    private final Map<List<?>, Optional<?>> before = new HashMap<>();
    private final Map<String, Profile> profiles = new HashMap<>();
    private final LentReading lentTests;
    private final ReadBench bench;

    private EvidenceReader(
            Records book,
            ReadBench bench,
            Function<MixId, List<Version<Determination>>> determinations,
            Function<DeterminationId, List<Version<Trial>>> trials,
            Function<MixId, List<Version<FactorIssue>>> issues,
            Function<MixId, List<Version<FactorProposal>>> proposals,
            Function<MixId, List<Version<ChangeDecision>>> decisions,
            ReportedReading reported,
            ReadStones stones) {
        this.book = book;
        this.bench = bench;
        this.stones = stones;
        this.determinations = determinations;
        this.trials = trials;
        this.issues = issues;
        this.proposals = proposals;
        this.decisions = decisions;
        this.reported = reported;
        this.lentTests = new LentReading(this, book);
    }

    /** Makes one that asks for the records of each mix when it is read. */
    public static EvidenceReader asking(Records book) {
        return asking(book, new ReadBench(book));
    }

    private static EvidenceReader asking(Records book, ReadBench bench) {
        return new EvidenceReader(
                book,
                bench,
                mix -> book.latestOf(Belonging.DETERMINATIONS_OF_MIX, mix.text()),
                determination -> book.latestOf(Belonging.TRIALS_OF_DETERMINATION, determination.text()),
                mix -> book.latestOf(Belonging.ISSUES_OF_MIX, mix.text()),
                mix -> book.latestOf(Belonging.PROPOSALS_OF_MIX, mix.text()),
                mix -> book.latestOf(Belonging.DECISIONS_OF_MIX, mix.text()),
                ReportedReading.asking(book),
                new ReadStones(book));
    }

    /** Returns the trials that count of a mix, by determination, whichever mixes are read here. */
    List<CountedTrials> counted(Version<MixDesign> mix, LentReading known) {
        EvidenceReader asking = asking(book, bench);
        asking.lentTests.know(known);
        return asking.read(mix).counted();
    }

    /** Makes one that reads the records of all mixes now. */
    static EvidenceReader ofAll(Records book) {
        return new EvidenceReader(
                book,
                new ReadBench(book),
                all(grouped(book, Determination.class, Determination::mixId)),
                all(grouped(book, Trial.class, Trial::determinationId)),
                all(grouped(book, FactorIssue.class, FactorIssue::mixId)),
                all(grouped(book, FactorProposal.class, FactorProposal::mixId)),
                all(grouped(book, ChangeDecision.class, ChangeDecision::mixId)),
                ReportedReading.asking(book),
                new ReadStones(book));
    }

    /**
     * Returns one that asks for the same and knows what was kept since; meters, calibrations and equipment are read again only when
     * any of them was.
     */
    public EvidenceReader after(KeptSince touched) {
        boolean isSameBench = Collections.disjoint(
                touched.kinds(), List.of(RecordKind.METER, RecordKind.METER_CALIBRATION, RecordKind.EQUIPMENT));
        return asking(book, isSameBench ? bench : new ReadBench(book));
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

    static <T extends Kept, K> Map<K, List<Version<T>>> grouped(Records book, Class<T> kind, Function<T, K> key) {
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
        List<String> counting = mixes.values().stream()
                .filter(mix -> Reported.countsProduction(profile(mix)))
                .map(mix -> mix.value().recordId())
                .toList();
        List<Version<FactorIssue>> issued = book.latestOf(Belonging.ISSUES_OF_MIX, names);
        stones.know(mixes.values(), made, issued);
        EvidenceReader ofGroup = new EvidenceReader(
                book,
                bench,
                all(grouped(made, Determination::mixId)),
                all(grouped(
                        book.latestOf(Belonging.TRIALS_OF_DETERMINATION, determinationNames), Trial::determinationId)),
                all(grouped(issued, FactorIssue::mixId)),
                all(grouped(book.latestOf(Belonging.PROPOSALS_OF_MIX, names), FactorProposal::mixId)),
                all(grouped(book.latestOf(Belonging.DECISIONS_OF_MIX, names), ChangeDecision::mixId)),
                reported.of(all(grouped(book.latestOf(Belonging.PRODUCTION_OF_MIX, counting), Production::mixId))),
                stones);
        ofGroup.before.putAll(before);
        ofGroup.profiles.putAll(profiles);
        ofGroup.lentTests.know(lentTests);
        names.stream()
                .flatMap(name -> Optional.ofNullable(mixes.get(name)).stream())
                .map(ofGroup::read)
                .forEach(taker);
        before.putAll(ofGroup.before);
        profiles.putAll(ofGroup.profiles);
        lentTests.know(ofGroup.lentTests);
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
                .map(determination -> judge(
                        determination,
                        mix,
                        profile,
                        trials.apply(determination.value().id())))
                .toList();
        List<Version<FactorIssue>> issued =
                issues.apply(mix.value().id()).stream().sorted(BY_REVISION).toList();
        Map<Integer, Lent> lent = lentTests.of(issued);
        List<Version<FactorProposal>> proposed = proposals.apply(mix.value().id()).stream()
                .sorted(Comparator.comparingInt(version -> version.value().number()))
                .toList();
        List<Lent> allLent = lentTests.with(proposed, lent.values());
        List<SourceStory> ofMix = mix.value().sources().stream()
                .sorted()
                .flatMap(id -> stones.of(id).stream())
                .toList();
        Reported beside = reported.of(mix.value(), profile);
        Map<Integer, Recheck> rechecks = new HashMap<>();
        issued.stream().map(Version::value).filter(FactorIssue::isIssue).forEach(issue -> {
            Optional<JudgedDetermination> behind = Optional.ofNullable(lent.get(issue.revision()))
                    .map(Lent::determination)
                    .or(() -> of(issue.determinationId(), judged));
            LocalDate since = Recheck.since(behind, issue.inForceFrom());
            rechecks.put(issue.revision(), Recheck.of(profile, mix.value(), ofMix, beside, since, issue.recheckBy()));
        });
        return new Evidence(
                mix,
                profile,
                ofMix,
                bench.meters,
                bench.stories(profile),
                bench.equipment,
                judged,
                issued,
                proposed,
                bases(mix, issued, judged, lent),
                made(judged, allLent),
                firstKept(mix),
                allLent,
                decisions.apply(mix.value().id()).stream()
                        .sorted(Comparator.comparing((Version<ChangeDecision> version) ->
                                        version.value().decidedOn())
                                .thenComparing(
                                        version -> version.value().recordId().length())
                                .thenComparing(version -> version.value().recordId()))
                        .toList(),
                beside,
                rechecks);
    }

    private Instant firstKept(Version<MixDesign> mix) {
        Optional<Version<MixDesign>> first = mix.number() == 1
                ? Optional.of(mix)
                : book.version(MixDesign.class, mix.value().recordId(), 1);
        return first.orElse(mix).stamp().at();
    }

    private Map<Integer, Basis> bases(
            Version<MixDesign> today,
            List<Version<FactorIssue>> issued,
            List<JudgedDetermination> judged,
            Map<Integer, Lent> lent) {
        Map<Integer, Basis> bases = new HashMap<>();
        for (Version<FactorIssue> version : issued) {
            FactorIssue issue = version.value();
            Optional<Lent> other = Optional.ofNullable(lent.get(issue.revision()));
            // Where the group is not there nobody can vouch for the member.
            if (issue.isIssue() && issue.isLent() == other.isPresent()) {
                Set<LocalDate> days = other.map(one -> days(one.determination()))
                        .orElseGet(() -> days(issue.determinationId(), judged));
                Optional<GroupTerms> terms = other.map(Lent::terms)
                        .or(() -> issue.grounds().group().flatMap(ground -> lentTests.terms(ground, today)));
                then(MixDesign.class, issue.testedMix().text(), issue.mixVersion())
                        .map(mix -> basis(mix, issue.sourceVersions(), days))
                        .map(own -> terms.map(own::on).orElse(own))
                        .ifPresent(basis -> bases.put(issue.revision(), basis));
            }
        }
        return bases;
    }

    private Map<DeterminationId, Basis> made(List<JudgedDetermination> judged, Collection<Lent> lent) {
        Map<DeterminationId, Basis> made = new HashMap<>();
        judged.forEach(one -> made(one)
                .ifPresent(basis -> made.put(one.determination().value().id(), basis)));
        lent.forEach(one -> made(one.determination()).ifPresent(basis -> made.put(one.id(), basis.on(one.terms()))));
        return made;
    }

    private Optional<Basis> made(JudgedDetermination judged) {
        Determination determination = judged.determination().value();
        return then(MixDesign.class, determination.mixId().text(), determination.mixVersion())
                .map(mix -> basis(mix, determination.sourceVersions(), days(judged)));
    }

    Profile profile(Version<MixDesign> mix) {
        return profiles.computeIfAbsent(mix.value().profileId(), id -> profileOf(book, id));
    }

    /**
     * Judges trials of a determination, each by itself, with the mix design as it was when the determination was begun.
     *
     * @param today the newest version of its mix, which names the profile
     */
    public List<JudgedTrial> judge(Determination determination, Version<MixDesign> today, List<Version<Trial>> some) {
        Profile profile = profile(today);
        Optional<MixDesign> mix = then(MixDesign.class, today.value().recordId(), determination.mixVersion());
        Map<Volume, Optional<CorrectionSample>> samples = new HashMap<>();
        return some.stream()
                .map(trial -> judge(
                        trial,
                        mix,
                        profile,
                        bowl -> samples.computeIfAbsent(bowl, any -> JudgedTrial.sample(mix, any))))
                .toList();
    }

    JudgedDetermination judge(
            Version<Determination> determination,
            Version<MixDesign> today,
            Profile profile,
            List<Version<Trial>> made) {
        List<JudgedTrial> judged = JudgedDetermination.inCompany(judge(determination.value(), today, made));
        double division = MeterScale.of(judged, bench.meters).divisionPercent().doubleValue();
        return JudgedDetermination.of(determination, judged, division, profile);
    }

    private JudgedTrial judge(
            Version<Trial> trial,
            Optional<MixDesign> mix,
            Profile profile,
            Function<Volume, Optional<CorrectionSample>> samples) {
        return Optional.ofNullable(bench.stories(profile).get(trial.value().meterId()))
                .map(story -> JudgedTrial.of(trial, mix, story, samples))
                .orElseGet(() -> JudgedTrial.of(trial, mix, Optional.empty(), profile));
    }

    private static Optional<JudgedDetermination> of(DeterminationId id, List<JudgedDetermination> judged) {
        return judged.stream()
                .filter(one -> one.determination().value().id().equals(id))
                .findFirst();
    }

    private static Set<LocalDate> days(DeterminationId id, List<JudgedDetermination> judged) {
        return of(id, judged).map(EvidenceReader::days).orElse(Set.of());
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
        versions.forEach((id, version) -> stones.of(id)
                .filter(story -> story.of(version).isPresent())
                .ifPresent(story -> stories.put(id, story)));
        return new Basis(mix, versions, stories, days, Optional.empty());
    }

    <T extends Kept> Optional<T> then(Class<T> kind, String recordId, int number) {
        return before.computeIfAbsent(
                        List.of(kind, recordId, number),
                        any -> book.version(kind, recordId, number).map(Version::value))
                .map(kind::cast);
    }

    /** Returns the profile of a mix: the laboratory's own copy, a named standard's, or else the default one. */
    public static Profile profileOf(Records book, String profileId) {
        return book.latest(LaboratoryProfile.class, profileId)
                .map(version -> version.value().profile())
                .or(() -> Profiles.find(profileId))
                .orElseGet(Profiles::standard);
    }
}
