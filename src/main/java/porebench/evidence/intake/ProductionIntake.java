package porebench.evidence.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.Production;
import porebench.record.RecordKind;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.Records;
import porebench.record.id.MixId;

/** Holds the spells of production of an import against each other and against those that are there, once all are known. */
final class ProductionIntake {
    private final Map<String, Production> there;
    private final Map<String, Production> coming = new LinkedHashMap<>();

    private ProductionIntake(Records book, List<Draft> drafts) {
        drafts.stream()
                .filter(draft -> draft.value() instanceof Production)
                .forEach(draft -> coming.put(draft.value().recordId(), (Production) draft.value()));
        Set<String> mixes =
                coming.values().stream().map(spell -> spell.mixId().text()).collect(Collectors.toSet());
        there = new HashMap<>();
        book.latestOf(Belonging.PRODUCTION_OF_MIX, mixes)
                .forEach(version -> there.put(version.value().recordId(), version.value()));
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
        for (MixId mix : intake.coming.values().stream()
                .map(Production::mixId)
                .distinct()
                .toList()) {
            Optional<Production> refused = intake.refused(mix);
            while (refused.isPresent()) {
                Production spell = refused.get();
                Incoming one = Objects.requireNonNull(spells.get(spell.recordId()));
                spell.checkBeside(intake.ofMix(mix)).ifPresent(problem -> problems.add(problem.at(one.place())));
                intake.coming.remove(spell.recordId());
                refused = intake.refused(mix);
            }
        }
        return drafts.stream()
                .filter(draft -> !(draft.value() instanceof Production)
                        || intake.coming.containsKey(draft.value().recordId()))
                .toList();
    }

    /** Returns the spells of a mix as they will be. */
    private Collection<Production> ofMix(MixId mix) {
        Map<String, Production> all = new HashMap<>(there);
        all.putAll(coming);
        return all.values().stream().filter(spell -> spell.mixId().equals(mix)).toList();
    }

    /** Returns the spell to be refused of the first two of a mix that overlap. */
    private Optional<Production> refused(MixId mix) {
        List<Production> inOrder = new ArrayList<>(ofMix(mix));
        inOrder.sort(Comparator.comparing(Production::firstDay).thenComparing(Production::id));
        for (int i = 1; i < inOrder.size(); i++) {
            Production earlier = inOrder.get(i - 1);
            Production later = inOrder.get(i);
            if (earlier.overlaps(later)) {
                List<String> order = List.copyOf(coming.keySet());
                return order.indexOf(earlier.recordId()) > order.indexOf(later.recordId())
                        ? Optional.of(earlier)
                        : Optional.of(later);
            }
        }
        return Optional.empty();
    }
}
