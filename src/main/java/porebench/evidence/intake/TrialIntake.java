package porebench.evidence.intake;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import porebench.evidence.Evidence;
import porebench.evidence.EvidenceReader;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.Soaks;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.record.Determination;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.SheetPhoto;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.Photos;
import porebench.record.book.Records;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** Finds the determination of each trial that comes in, and what is wrong with the company it would keep there. */
final class TrialIntake {
    private final Records book;
    private final Touched touched;
    private final Map<MixId, List<Trial>> trials;
    private final Map<MixId, List<Determination>> determinations;
    private final Set<DeterminationId> named = new HashSet<>();
    private final Map<MixId, Map<TrialId, DeterminationId>> placed = new HashMap<>();
    private final Map<TrialId, List<Problem>> doubts = new HashMap<>();
    private final Map<DeterminationId, Company> company = new HashMap<>();
    private final Set<TrialId> unexplained = new HashSet<>();
    private @Nullable EvidenceReader reader;

    TrialIntake(Records book, Touched touched, List<Incoming> incoming) {
        this.book = book;
        this.touched = touched;
        this.trials = Touched.grouped(Trial.class, incoming, Trial::mixId);
        this.determinations = Touched.grouped(Determination.class, incoming, Determination::mixId);
        Touched.of(Trial.class, incoming).map(Trial::determinationId).forEach(named::add);
        Touched.of(Determination.class, incoming).map(Determination::id).forEach(named::add);
    }

    /** The trials of one determination, whether those that are not struck are of both types of meter, and their soaks. */
    private static final class Company {
        private final Map<TrialId, Trial> trials = new HashMap<>();
        private final Map<MeterType, Integer> standing = new EnumMap<>(MeterType.class);
        private final Soaks soaks = new Soaks();

        void join(Trial trial) {
            Optional.ofNullable(trials.put(trial.id(), trial)).ifPresent(before -> {
                count(before, -1);
                soaks.remove(before);
            });
            count(trial, 1);
            soaks.add(trial);
        }

        private void count(Trial trial, int more) {
            if (trial.struckBecause().isEmpty()) {
                standing.merge(trial.readings().meterType(), more, Integer::sum);
            }
        }

        boolean isMixed() {
            return standing.values().stream().filter(count -> count > 0).count() > 1;
        }
    }

    /** Returns a trial in the determination it names, or where it is already, or in the mix's open one or a new one. */
    Trial placed(Trial trial) {
        Trial found = trial.namesDetermination()
                ? trial
                : trial.in(Objects.requireNonNull(
                        placed.computeIfAbsent(trial.mixId(), this::place).get(trial.id())));
        return found.keptBecause().isPresent() ? found : asExplained(found);
    }

    /** Returns a trial with the reason for which it was kept, when it was and its row does not say it. */
    private Trial asExplained(Trial trial) {
        return touched.value(Trial.class, RecordKind.TRIAL, trial.recordId())
                .filter(there -> there.equals(trial.keptFor(there.keptBecause())))
                .orElse(trial);
    }

    /** Returns the doubts about where a trial was put. */
    List<Problem> doubts(Trial trial) {
        return doubts.getOrDefault(trial.id(), List.of());
    }

    /** Returns the doubt that no soak fits between a trial and another of its determination; one kept already is not asked. */
    Optional<Problem> tooSoon(Trial trial) {
        Optional<Problem> doubt = isKept(trial)
                ? Optional.empty()
                : Objects.requireNonNull(company.get(trial.determinationId()))
                        .soaks
                        .doubt(trial, "tested_at");
        if (doubt.isPresent() && trial.keptBecause().isEmpty()) {
            unexplained.add(trial.id());
        }
        return doubt;
    }

    /** Returns the trials that were doubted so far and do not say why they are kept. */
    Set<TrialId> doubted() {
        return unexplained;
    }

    /** Returns what is to be kept with some of its trials kept for a reason. */
    static List<Draft> keptFor(List<Draft> drafts, Set<TrialId> doubted, String reason) {
        return drafts.stream()
                .map(draft -> draft.value() instanceof Trial trial && doubted.contains(trial.id())
                        ? new Draft(trial.keptFor(Optional.of(reason)), draft.basedOn(), draft.cameIn())
                        : draft)
                .toList();
    }

    private boolean isKept(Trial trial) {
        return touched.value(Trial.class, RecordKind.TRIAL, trial.recordId())
                .filter(trial::equals)
                .isPresent();
    }

    private Map<TrialId, DeterminationId> place(MixId mixId) {
        Optional<Evidence> evidence = evidence(mixId);
        TrialPlacing placing = new TrialPlacing(
                mixId,
                this::isTaken,
                evidence.map(known -> known.determinations().size()).orElse(0));
        Optional<JudgedDetermination> open = evidence.flatMap(Evidence::openDetermination);
        open.ifPresent(judged -> placing.add(judged.determination().value().id(), days(judged)));
        determinations.getOrDefault(mixId, List.of()).stream()
                .filter(one -> !isInBook(one.id()))
                .forEach(one -> placing.add(one.id(), List.of(one.openedOn())));
        List<Trial> own = trials.getOrDefault(mixId, List.of());
        own.stream()
                .filter(Trial::namesDetermination)
                .filter(trial -> !isInBook(trial.determinationId()) || placing.hasJoinable(trial.determinationId()))
                .forEach(trial -> placing.add(
                        trial.determinationId(), List.of(trial.testedAt().toLocalDate())));
        Map<TrialId, DeterminationId> found = new HashMap<>();
        own.stream()
                .filter(trial -> !trial.namesDetermination())
                .sorted(Comparator.comparing(Trial::testedAt).thenComparing(Trial::id))
                .forEach(trial -> {
                    found.computeIfAbsent(trial.id(), id -> inBook(trial).orElseGet(() -> placing.place(trial)));
                    doubts.computeIfAbsent(trial.id(), id -> placing.takeProblems());
                });
        return found;
    }

    private Optional<DeterminationId> inBook(Trial trial) {
        return touched.value(Trial.class, RecordKind.TRIAL, trial.recordId())
                .filter(there -> there.mixId().equals(trial.mixId()))
                .map(Trial::determinationId);
    }

    private Optional<Evidence> evidence(MixId mixId) {
        EvidenceReader once = Objects.requireNonNullElseGet(reader, () -> EvidenceReader.asking(book));
        reader = once;
        return book.latest(MixDesign.class, mixId.text()).map(once::read);
    }

    private static Collection<LocalDate> days(JudgedDetermination judged) {
        return judged.trials().isEmpty()
                ? List.of(judged.determination().value().openedOn())
                : judged.trials().stream()
                        .map(trial -> trial.trial().value().testedAt().toLocalDate())
                        .toList();
    }

    private boolean isTaken(DeterminationId id) {
        return isInBook(id) || named.contains(id);
    }

    private boolean isInBook(DeterminationId id) {
        return touched.latest(RecordKind.DETERMINATION, id.text()).isPresent();
    }

    /** Returns the problem that a trial stands beside trials on the other type of meter; one kept already is not asked. */
    Optional<Problem> mixedTypes(Trial trial) {
        boolean isKept = isKept(trial);
        Company beside = company.computeIfAbsent(trial.determinationId(), this::inBook);
        beside.join(trial);
        return isKept || !beside.isMixed()
                ? Optional.empty()
                : TrialSet.mixedTypes(trial.determinationId(), beside.trials.values());
    }

    private Company inBook(DeterminationId id) {
        Company there = new Company();
        touched.trialsOf(id).forEach(there::join);
        return there;
    }

    /** Returns what is wrong with a photo: nobody knows its trial. */
    static List<Problem> photo(SheetPhoto photo, BiFunction<RecordKind, String, Optional<Kept>> known) {
        return known.apply(RecordKind.TRIAL, photo.trialId().text()).isPresent()
                ? List.of()
                : List.of(Photos.unknownTrial(photo.trialId()));
    }
}
