package porebench.evidence.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.Production;
import porebench.record.RecordKind;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.Records;
import porebench.record.id.MixId;
import porebench.record.production.Spells;

/** Holds the spells of production of an import against each other and against those that are there, once all are known. */
final class ProductionIntake {
    private final Map<MixId, Map<String, Production>> there = new HashMap<>();
    private final Map<String, Production> moved = new HashMap<>();
    private final Map<MixId, Map<String, Production>> coming = new LinkedHashMap<>();
    private final Map<String, Integer> order = new HashMap<>();

    private ProductionIntake(Records book, List<Draft> drafts) {
        drafts.stream()
                .filter(draft -> draft.value() instanceof Production)
                .map(draft -> (Production) draft.value())
                .forEach(spell -> {
                    order.put(spell.recordId(), order.size());
                    moved.put(spell.recordId(), spell);
                    of(coming, spell.mixId()).put(spell.recordId(), spell);
                });
        book.latestOf(
                        Belonging.PRODUCTION_OF_MIX,
                        coming.keySet().stream().map(MixId::text).toList())
                .forEach(version ->
                        of(there, version.value().mixId()).put(version.value().recordId(), version.value()));
    }

    private static Map<String, Production> of(Map<MixId, Map<String, Production>> all, MixId mix) {
        return all.computeIfAbsent(mix, any -> new LinkedHashMap<>());
    }

    /** Returns what is wrong with a spell by itself, or because nobody knows its mix. */
    static List<Problem> check(Production made, BiFunction<RecordKind, String, Optional<Kept>> known, LocalDate today) {
        List<Problem> problems = new ArrayList<>(made.check(today));
        if (known.apply(RecordKind.MIX, made.mixId().text()).isEmpty()) {
            problems.add(Problem.error(
                    "mixId",
                    "import.unknown-mix",
                    made.kind().word(),
                    made.recordId(),
                    made.mixId().text()));
        }
        return problems;
    }

    /**
     * Returns what can be kept once every spell was held against the others as they will be: of two that overlap the one that
     * comes in, or comes in later, is refused.
     *
     * @param drafts what else can be kept, and the spells
     * @param spells the spells with their places
     * @param problems takes why one is refused
     */
    static List<Draft> looked(Records book, List<Draft> drafts, Map<String, Incoming> spells, List<Problem> problems) {
        if (spells.isEmpty()) {
            return drafts;
        }
        ProductionIntake intake = new ProductionIntake(book, drafts);
        boolean isRefused = true;
        while (isRefused) {
            // A refused correction stands where it stood before, perhaps of another mix.
            isRefused = false;
            for (MixId mix : List.copyOf(intake.coming.keySet())) {
                for (Optional<Production> one = intake.refused(mix); one.isPresent(); one = intake.refused(mix)) {
                    Production spell = one.get();
                    Incoming from = Objects.requireNonNull(spells.get(spell.recordId()));
                    spell.checkBeside(intake.ofMix(mix)).ifPresent(problem -> problems.add(problem.at(from.place())));
                    of(intake.coming, mix).remove(spell.recordId());
                    intake.moved.remove(spell.recordId());
                    isRefused = true;
                }
            }
        }
        return drafts.stream()
                .filter(draft -> !(draft.value() instanceof Production)
                        || intake.moved.containsKey(draft.value().recordId()))
                .toList();
    }

    /** Returns the spells of a mix as they will be. */
    private Collection<Production> ofMix(MixId mix) {
        Map<String, Production> all = new HashMap<>(of(there, mix));
        all.keySet().removeAll(moved.keySet());
        all.putAll(of(coming, mix));
        return all.values();
    }

    /** Returns the spell to be refused of the first two of a mix that overlap: the one that comes in, or comes in later. */
    private Optional<Production> refused(MixId mix) {
        return Spells.firstOverlap(ofMix(mix)).map(two -> {
            Production earlier = two.get(0);
            Production later = two.get(1);
            return place(earlier) > place(later) ? earlier : later;
        });
    }

    private int place(Production spell) {
        return spell.equals(moved.get(spell.recordId())) ? order.getOrDefault(spell.recordId(), -1) : -1;
    }
}
