package porebench.desk.overtime;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import porebench.evidence.FactorHistory;
import porebench.record.id.SourceId;

/** What trials are put together by. */
enum GroupedBy {
    MIX {
        @Override
        Set<String> of(FactorHistory.Made made) {
            return Set.of(made.trial().mixId().text());
        }
    },
    SOURCE {
        @Override
        Set<String> of(FactorHistory.Made made) {
            Set<String> sources = new TreeSet<>();
            made.sources().stream().map(SourceId::text).forEach(sources::add);
            return sources;
        }
    },
    METER {
        @Override
        Set<String> of(FactorHistory.Made made) {
            return Set.of(made.trial().meterId().text());
        }
    },
    OPERATOR {
        @Override
        Set<String> of(FactorHistory.Made made) {
            String operator = made.trial().operator().strip();
            return operator.isEmpty() ? Set.of() : Set.of(operator);
        }
    };

    /** Returns the mix, sources, meter or operator of a trial, by their ids. */
    abstract Set<String> of(FactorHistory.Made made);

    /** Returns all there are, in the order of their ids. */
    List<String> all(FactorHistory history) {
        Set<String> all = new TreeSet<>();
        history.made().forEach(made -> all.addAll(of(made)));
        return List.copyOf(all);
    }
}
