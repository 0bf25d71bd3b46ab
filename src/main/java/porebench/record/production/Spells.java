package porebench.record.production;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.method.Problem;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.RecordKind;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.Records;

/** The last gate before spells of production are kept, whichever door they come through and whatever was kept meanwhile. */
public final class Spells {
    private Spells() {}

    /**
     * Returns why some drafts must not be kept: a spell of a mix that is not there, or one that shares a day with another.
     *
     * @param book where they are to be kept
     */
    public static List<Problem> refusals(Records book, List<Draft> drafts) {
        Map<String, Production> coming = new HashMap<>();
        Set<String> mixes = new HashSet<>();
        for (Draft draft : drafts) {
            if (draft.value() instanceof Production spell) {
                coming.put(spell.recordId(), spell);
                mixes.add(spell.mixId().text());
            }
        }
        if (coming.isEmpty()) {
            return List.of();
        }
        Map<String, Production> all = new HashMap<>();
        book.latestOf(Belonging.PRODUCTION_OF_MIX, mixes)
                .forEach(version -> all.put(version.value().recordId(), version.value()));
        all.putAll(coming);
        Set<String> known = new HashSet<>(book.latest(MixDesign.class, mixes).keySet());
        drafts.stream()
                .filter(draft -> draft.value().kind() == RecordKind.MIX)
                .forEach(draft -> known.add(draft.value().recordId()));
        List<Problem> problems = new ArrayList<>();
        coming.values().stream()
                .filter(spell -> !known.contains(spell.mixId().text()))
                .forEach(spell -> problems.add(unknownMix(spell)));
        all.values().stream()
                .collect(Collectors.groupingBy(Production::mixId))
                .values()
                .forEach(ofMix -> firstOverlap(ofMix)
                        .flatMap(two -> two.get(1).checkBeside(ofMix))
                        .ifPresent(problems::add));
        return problems;
    }

    /** Returns the first two of some spells of a mix that share a day, the earlier one first; empty where none do. */
    public static Optional<List<Production>> firstOverlap(Collection<Production> ofMix) {
        List<Production> inOrder = ofMix.stream()
                .sorted(Comparator.comparing(Production::firstDay).thenComparing(Production::id))
                .toList();
        for (int i = 1; i < inOrder.size(); i++) {
            if (inOrder.get(i - 1).overlaps(inOrder.get(i))) {
                return Optional.of(inOrder.subList(i - 1, i + 1));
            }
        }
        return Optional.empty();
    }

    /** Returns the refusal of a spell of a mix that nobody knows. */
    public static Problem unknownMix(Production spell) {
        return Problem.error("mixId", "production.unknown-mix", spell.mixId().text());
    }
}
