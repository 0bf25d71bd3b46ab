package porebench.evidence.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.method.Problem;
import porebench.record.Determination;
import porebench.record.Kept;
import porebench.record.LabBook;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** Finds the determination of each trial that comes in, and what is wrong with the company it would keep there. */
final class TrialIntake {
    private final LabBook book;
    private final List<Incoming> incoming;
    private final Map<MixId, Map<TrialId, DeterminationId>> placed = new HashMap<>();
    private final Map<TrialId, List<Problem>> doubts = new HashMap<>();
    private final Map<DeterminationId, Map<TrialId, Trial>> company = new HashMap<>();

    TrialIntake(LabBook book, List<Incoming> incoming) {
        this.book = book;
        this.incoming = List.copyOf(incoming);
    }

    /** Returns a trial in the determination it names, or where it is already, or in the mix's open one or a new one. */
    Trial placed(Trial trial) {
        return trial.namesDetermination()
                ? trial
                : trial.in(Objects.requireNonNull(
                        placed.computeIfAbsent(trial.mixId(), this::place).get(trial.id())));
    }

    /** Returns the doubts about where a trial was put. */
    List<Problem> doubts(Trial trial) {
        return doubts.getOrDefault(trial.id(), List.of());
    }

    private Map<TrialId, DeterminationId> place(MixId mixId) {
        Optional<Evidence> evidence = Evidence.of(book, mixId);
        TrialPlacing placing = new TrialPlacing(
                mixId,
                this::isTaken,
                evidence.map(known -> known.determinations().size()).orElse(0));
        Optional<JudgedDetermination> open = evidence.flatMap(Evidence::openDetermination);
        open.ifPresent(judged -> placing.add(judged.determination().value().id(), days(judged)));
        of(Determination.class)
                .filter(one -> one.mixId().equals(mixId) && !isInBook(one.id()))
                .forEach(one -> placing.add(one.id(), List.of(one.openedOn())));
        List<Trial> trials =
                of(Trial.class).filter(trial -> trial.mixId().equals(mixId)).toList();
        trials.stream()
                .filter(Trial::namesDetermination)
                .filter(trial -> !isInBook(trial.determinationId()) || placing.hasJoinable(trial.determinationId()))
                .forEach(trial -> placing.add(
                        trial.determinationId(), List.of(trial.testedAt().toLocalDate())));
        Map<TrialId, DeterminationId> found = new HashMap<>();
        trials.stream()
                .filter(trial -> !trial.namesDetermination())
                .sorted(Comparator.comparing(Trial::testedAt).thenComparing(Trial::id))
                .forEach(trial -> {
                    found.computeIfAbsent(trial.id(), id -> inBook(trial).orElseGet(() -> placing.place(trial)));
                    doubts.computeIfAbsent(trial.id(), id -> placing.takeProblems());
                });
        return found;
    }

    private Optional<DeterminationId> inBook(Trial trial) {
        return book.latest(Trial.class, trial.id().text())
                .filter(there -> there.value().mixId().equals(trial.mixId()))
                .map(there -> there.value().determinationId());
    }

    private static Collection<LocalDate> days(JudgedDetermination judged) {
        return judged.trials().isEmpty()
                ? List.of(judged.determination().value().openedOn())
                : judged.trials().stream()
                        .map(trial -> trial.trial().value().testedAt().toLocalDate())
                        .toList();
    }

    private boolean isTaken(DeterminationId id) {
        return isInBook(id)
                || of(Determination.class).anyMatch(one -> one.id().equals(id))
                || of(Trial.class).anyMatch(trial -> trial.determinationId().equals(id));
    }

    private boolean isInBook(DeterminationId id) {
        return book.latest(Determination.class, id.text()).isPresent();
    }

    private <T extends Kept> Stream<T> of(Class<T> kind) {
        return incoming.stream().map(Incoming::value).filter(kind::isInstance).map(kind::cast);
    }

    /** Returns the problem that a trial stands beside trials on the other type of meter; one kept already is not asked. */
    Optional<Problem> mixedTypes(Trial trial) {
        if (company.isEmpty()) {
            book.latest(Trial.class).forEach(there -> join(there.value()));
        }
        boolean isKept = book.latest(Trial.class, trial.id().text())
                .filter(there -> there.value().equals(trial))
                .isPresent();
        join(trial);
        return isKept
                ? Optional.empty()
                : TrialSet.mixedTypes(
                        trial.determinationId(),
                        new ArrayList<>(company.getOrDefault(trial.determinationId(), Map.of())
                                .values()));
    }

    private void join(Trial trial) {
        company.computeIfAbsent(trial.determinationId(), id -> new HashMap<>()).put(trial.id(), trial);
    }
}
