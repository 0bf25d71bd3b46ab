package porebench.evidence;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.trial.ScatterElsewhere;
import porebench.method.trial.StopRule;
import porebench.record.ChangeDecision;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.FactorProposal;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.source.SourcePeriod;
import porebench.record.source.SourceStory;

/**
 * Everything a lab book knows about one mix: design, sources, determinations, factor issues and how they stand.
 *
 * @param mix the mix design
 * @param profile the profile it is tested by
 * @param stones what the sources of its aggregates were, those that are in the register, in the order of their ids
 * @param meters all meters of the laboratory, by id
 * @param stories how each meter stood on any day, by id
 * @param equipment the balances, cylinders and vessels of the laboratory
 * @param determinations its determinations, the oldest first
 * @param issues its factor issues, the first revision first
 * @param proposals what is and was proposed as its next revision, the first one first
 * @param bases what each revision that issued a factor rests on, by revision
 * @param made what the trials of each determination were made with, by determination
 * @param firstKept when its design was first kept
 * @param lent the determinations of a mix tested for its group, on which factors of this one rest
 * @param decisions what was decided of its factor when a source had changed, the first one first
 * @param reported what was reported of it beside its trials
 * @param rechecks when each revision that issued a factor has to be checked again, by revision
 */
public record Evidence(
        Version<MixDesign> mix,
        Profile profile,
        List<SourceStory> stones,
        Map<MeterId, Version<Meter>> meters,
        Map<MeterId, MeterStory> stories,
        LaboratoryEquipment equipment,
        List<JudgedDetermination> determinations,
        List<Version<FactorIssue>> issues,
        List<Version<FactorProposal>> proposals,
        Map<Integer, Basis> bases,
        Map<DeterminationId, Basis> made,
        Instant firstKept,
        List<Lent> lent,
        List<Version<ChangeDecision>> decisions,
        Reported reported,
        Map<Integer, Recheck> rechecks) {
    public Evidence {
        stones = List.copyOf(stones);
        meters = Map.copyOf(meters);
        stories = Map.copyOf(stories);
        determinations = List.copyOf(determinations);
        issues = List.copyOf(issues);
        proposals = List.copyOf(proposals);
        bases = Map.copyOf(bases);
        made = Map.copyOf(made);
        lent = List.copyOf(lent);
        decisions = List.copyOf(decisions);
        rechecks = Map.copyOf(rechecks);
    }

    /**
     * Something that makes an issued factor untrue.
     *
     * @param source the source that changed; empty when the mix's own aggregates did
     * @param drift why the mix is no longer like the one tested for its group; empty where that is not what happened
     */
    public record AggregateChange(Optional<SourceId> source, Optional<Problem> drift) {
        public AggregateChange(Optional<SourceId> source) {
            this(source, Optional.empty());
        }

        /** Returns the change as a doubt about the factor of a mix, to be said in words. */
        public Problem asProblem(MixId mixId) {
            return drift.or(() -> source.map(id -> Problem.warning("sources", "register.source-changed", id.text())))
                    .orElseGet(() -> Problem.warning("mix", "register.mix-changed", mixId.text()));
        }
    }

    /** Gathers what a lab book knows about one mix; empty when it has no such mix. */
    public static Optional<Evidence> of(LabBook book, MixId mixId) {
        return book.latest(MixDesign.class, mixId.text())
                .map(mix -> EvidenceReader.asking(book).read(mix));
    }

    /** Gathers what a lab book knows about every mix, in the order of their ids. */
    public static List<Evidence> ofAll(LabBook book) {
        EvidenceReader reader = EvidenceReader.ofAll(book);
        return book.latest(MixDesign.class).stream().map(reader::read).toList();
    }

    /** Returns the newest versions of its sources that are in the register, in the order of their ids. */
    public List<Version<Source>> sources() {
        return stones.stream().map(SourceStory::newest).toList();
    }

    /** Returns what a source of the mix was; empty where the register does not know it. */
    public Optional<SourceStory> story(SourceId source) {
        return stones.stream().filter(story -> story.id().equals(source)).findFirst();
    }

    /** Returns the same evidence with another story of a source, such as one that is not kept yet. */
    public Evidence with(SourceStory story) {
        return new OtherEvidence(this).with(story);
    }

    /** Returns the same evidence of another design of its mix, such as a draft. */
    public Evidence with(MixDesign design) {
        return new OtherEvidence(this).with(design);
    }

    /** Returns whether any of its trials is of the simulated bench, as all are in a training book. */
    public boolean isSimulated() {
        return determinations.stream()
                .flatMap(judged -> judged.trials().stream())
                .anyMatch(trial -> trial.trial().value().simulated());
    }

    /** Returns the meters of the laboratory as they were on a day, in the order of their ids. */
    public List<Meter> metersOn(LocalDate day) {
        return stories.values().stream()
                .map(story -> story.meterOn(day))
                .sorted(Comparator.comparing(Meter::id))
                .toList();
    }

    /** Returns the revision that holds at a moment: the newest one that had begun by then, a withdrawal being none. */
    public Optional<FactorIssue> inForceAt(LocalDateTime moment) {
        return begunBy(moment).filter(FactorIssue::isIssue);
    }

    /** Returns the revision that holds on a day, at its end: see {@link Moments}. */
    public Optional<FactorIssue> inForceOn(LocalDate day) {
        return inForceAt(Moments.endOf(day));
    }

    /** Returns the newest revision, issue or withdrawal, that had begun at a moment. */
    public Optional<FactorIssue> begunBy(LocalDateTime moment) {
        return Moments.begunBy(issues, moment);
    }

    /** Returns how it stands with the factor on a day, at its end: see {@link Moments}. */
    public FactorState stateOn(LocalDate day) {
        return stateAt(Moments.endOf(day));
    }

    /** Returns how it stands with the factor at a moment. */
    public FactorState stateAt(LocalDateTime moment) {
        LocalDate day = moment.toLocalDate();
        Optional<FactorIssue> begun = begunBy(moment);
        if (begun.isEmpty()) {
            return FactorState.NO_FACTOR;
        }
        FactorIssue issue = begun.get();
        if (!issue.isIssue()) {
            return FactorState.WITHDRAWN;
        }
        if (issue.origin() == FactorOrigin.IMPORTED) {
            return FactorState.NOT_VERIFIED;
        }
        if (!changesSince(issue, day).isEmpty()) {
            return FactorState.SOURCE_CHANGED;
        }
        if (Lent.withdrawn(this, issue, moment).isPresent()
                || !evidenceChangesSince(issue).isEmpty()) {
            return FactorState.EVIDENCE_CHANGED;
        }
        return recheck(issue).stateOn(day);
    }

    /** Returns when a revision that issued a factor has to be checked again, and why. */
    public Recheck recheck(FactorIssue issue) {
        Recheck known = rechecks.get(issue.revision());
        return known != null
                ? known
                : recheck(determination(issue.determinationId()), issue.inForceFrom(), issue.recheckBy());
    }

    /** Returns when a factor from a determination, if the lab book has it, would have to be checked again. */
    public Recheck recheck(Optional<JudgedDetermination> judged, LocalDate inForceFrom, LocalDate recheckBy) {
        return Recheck.of(profile, mix.value(), stones, reported, Recheck.since(judged, inForceFrom), recheckBy);
    }

    /**
     * Returns what is no longer, or not yet, what a revision rests on: the mix's aggregates, or named sources of which another
     * stone is in use on a day.
     */
    public List<AggregateChange> changesSince(FactorIssue issue, LocalDate day) {
        return changesSince(Optional.ofNullable(bases.get(issue.revision())), story -> story.on(day));
    }

    /**
     * Returns the sources that become another stone than a revision rests on after a day, each with the first day of it: until then
     * the factor holds.
     */
    public SortedMap<LocalDate, SourceId> changesToCome(FactorIssue issue, LocalDate day) {
        return Optional.ofNullable(bases.get(issue.revision()))
                .filter(any -> issue.isIssue())
                .map(basis -> basis.toCome(stones, day))
                .orElseGet(TreeMap::new);
    }

    /**
     * Returns what happened since a revision was issued to the trials and calibrations it rests on: corrected, struck, added
     * or gone.
     */
    public List<Problem> evidenceChangesSince(FactorIssue issue) {
        return issues.stream()
                .filter(version -> version.value().revision() == issue.revision())
                .flatMap(version -> new EvidenceChanges(this).since(version).stream())
                .toList();
    }

    /** Returns what will make a factor untrue after a day, before its recheck, and that the mix tested for its group was tested anew. */
    public List<Problem> seenComing(FactorIssue issue, LocalDate day) {
        return new Untrue(this, issue, day).coming();
    }

    /** Returns everything that makes an issued factor untrue on a day; nothing for a withdrawal. */
    public List<Problem> whyUntrue(FactorIssue issue, LocalDate day) {
        return issue.isIssue() ? new Untrue(this, issue, day).why() : List.of();
    }

    /**
     * Returns what changed since the trials of a determination: the mix's aggregates, or named sources of which another stone was
     * declared last, whether or not it has begun. Whoever tests after a change was declared tests what it brings.
     */
    public List<AggregateChange> changesSince(JudgedDetermination judged) {
        return changesSince(basis(judged), SourceStory::last);
    }

    /** Returns what is not what the trials of a determination were made with on a day on which a factor from them would begin. */
    public List<AggregateChange> changesSince(JudgedDetermination judged, LocalDate day) {
        return changesSince(basis(judged), story -> story.on(day));
    }

    private Optional<Basis> basis(JudgedDetermination judged) {
        return Optional.ofNullable(made.get(judged.determination().value().id()));
    }

    /** Returns whether the trials of a determination were made of the stone that was declared last of a source of the mix. */
    boolean isOfLastStone(JudgedDetermination judged, SourceId source) {
        return story(source)
                .flatMap(story -> basis(judged).filter(basis -> basis.isOf(source, story.last())))
                .isPresent();
    }

    private List<AggregateChange> changesSince(Optional<Basis> basis, Function<SourceStory, SourcePeriod> inUse) {
        if (basis.isEmpty()) {
            // A version of the mix that is not there cannot be vouched for.
            return List.of(new AggregateChange(Optional.empty()));
        }
        return basis.get().changes(mix, proportionTolerance(), stones, inUse);
    }

    /** Returns how far the proportions of the aggregates may drift before the mix counts as changed, in percentage points. */
    double proportionTolerance() {
        return profile.number(FigureName.PROPORTION_TOLERANCE);
    }

    /** Returns the newest revision, issue or withdrawal. */
    public Optional<FactorIssue> newestIssue() {
        return issues.isEmpty()
                ? Optional.empty()
                : Optional.of(issues.get(issues.size() - 1).value());
    }

    /**
     * Returns the determination that new trials join: the newest, as long as no factor was issued from it and its mix and
     * sources are the same stone today.
     */
    public Optional<JudgedDetermination> openDetermination() {
        return determinations.isEmpty()
                ? Optional.empty()
                : Optional.of(determinations.get(determinations.size() - 1))
                        .filter(newest -> changesSince(newest).isEmpty())
                        .filter(newest -> issues.stream()
                                .noneMatch(issue -> issue.value().isIssue()
                                        && issue.value()
                                                .determinationId()
                                                .equals(newest.determination()
                                                        .value()
                                                        .id())));
    }

    /** Returns a determination of this mix, or one that a factor of it rests on, by its id. */
    public Optional<JudgedDetermination> determination(DeterminationId id) {
        return Stream.concat(determinations.stream(), lent.stream().map(Lent::determination))
                .filter(judged -> judged.determination().value().id().equals(id))
                .findFirst();
    }

    /** Returns the division of the scale that a determination vouches for, in % air: see {@link MeterScale}. */
    public double divisionPercent(JudgedDetermination judged) {
        return scale(judged.trials()).divisionPercent().doubleValue();
    }

    /** Returns the scale that some trials of one determination vouch for. */
    public MeterScale scale(List<JudgedTrial> trials) {
        return MeterScale.of(trials, meters);
    }

    /**
     * Says whether the trials of a determination of this mix are enough, beside the laboratory's other determinations.
     *
     * @return what to do, or empty when no trial counts
     */
    public Optional<StopRule> stop(JudgedDetermination judged, LaboratoryScatter laboratory) {
        return enough(judged).stop(laboratory);
    }

    private EnoughTrials enough(JudgedDetermination judged) {
        return enough(judged, Lent.countedBeside(this, judged));
    }

    /**
     * Returns what is asked of a determination of this mix about its scatter.
     *
     * @param counted the trials of this mix that count, by determination
     */
    public EnoughTrials enough(JudgedDetermination judged, List<CountedTrials> counted) {
        return new EnoughTrials(counted, counted(judged), divisionPercent(judged), profile);
    }

    /** Returns the scatter of all determinations of the laboratory but one of this mix, on a type of meter, by their mix. */
    public ScatterElsewhere elsewhere(JudgedDetermination judged, MeterType type, LaboratoryScatter laboratory) {
        return laboratory.without(Lent.countedBeside(this, judged), counted(judged), type);
    }

    /** Returns the trials that count, by determination. */
    public List<CountedTrials> counted() {
        return determinations.stream().map(this::counted).toList();
    }

    /** Returns the trials of a determination that count; a corrected version of a source counts as the one it corrected. */
    private CountedTrials counted(JudgedDetermination judged) {
        Map<SourceId, Integer> said = new HashMap<>();
        judged.determination().value().sourceVersions().forEach((source, version) -> {
            Optional<SourceStory> story =
                    basis(judged).map(basis -> basis.stories().get(source));
            said.put(source, story.map(known -> known.saidFor(version)).orElse(version));
        });
        return CountedTrials.of(judged, said, InTheBowl.of(basis(judged), judged.trials(), divisionPercent(judged)));
    }

    /** Returns the versions of the sources in the register today, by source. */
    public Map<SourceId, Integer> sourceVersions() {
        return sources().stream()
                .collect(Collectors.toUnmodifiableMap(source -> source.value().id(), Version::number));
    }

    /** Returns the id that the next determination of this mix gets. */
    public DeterminationId nextDeterminationId() {
        int number = determinations.size() + 1;
        while (determination(new DeterminationId(mix.value().id() + "/" + number))
                .isPresent()) {
            number++;
        }
        return new DeterminationId(mix.value().id() + "/" + number);
    }
}
