package porebench.desk.overtime;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.evidence.FactorHistory;
import porebench.record.id.SourceId;

/** What trials are put together by. */
enum GroupedBy {
    MIX(made -> Set.of(made.trial().mixId().text())),
    SOURCE(made -> made.sources().stream().map(SourceId::text).collect(Collectors.toSet())),
    METER(made -> Set.of(made.trial().meterId().text())),
    OPERATOR(made -> {
        String operator = made.trial().operator().strip();
        return operator.isEmpty() ? Set.of() : Set.of(operator);
    });

    private final Function<FactorHistory.Made, Set<String>> ids;

    GroupedBy(Function<FactorHistory.Made, Set<String>> ids) {
        this.ids = ids;
    }

    /** Returns the mix, sources, meter or operator of a trial, by their ids. */
    Set<String> of(FactorHistory.Made made) {
        return ids.apply(made);
    }

    /** Returns all there are, in the order of their ids. */
    List<String> all(FactorHistory history) {
        Set<String> all = new TreeSet<>();
        history.made().forEach(made -> all.addAll(of(made)));
        return List.copyOf(all);
    }
}
