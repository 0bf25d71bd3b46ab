package porebench.desk.trial;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import porebench.record.Trial;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;

/** The columns of a trial that the entry form has, and which of them it shows. */
final class BenchFields {
    private static final int NAMING = 3;

    /** All, as they stand on the page. */
    static final List<Column<Trial, ?>> ALL = TrialColumns.AT_THE_BENCH;

    /** What names the trial. */
    static final List<Column<Trial, ?>> HEAD = ALL.subList(0, NAMING);

    /** What is entered at the bench, in its order. */
    static final List<Column<Trial, ?>> BENCH = ALL.subList(NAMING, ALL.size());

    /** All, as the keys go through them. */
    static final List<Column<Trial, ?>> IN_ORDER_OF_KEYS =
            Stream.of(BENCH, HEAD).flatMap(List::stream).toList();

    private static final Set<Column<Trial, ?>> NOT_MEASURED =
            Set.of(TrialColumns.LEAK, TrialColumns.REMARKS, TrialColumns.ID, TrialColumns.OPERATOR);

    private BenchFields() {}

    /** Returns the column that a problem names, if something measured stands in it or the day, on which the meter depends. */
    static Optional<Column<Trial, ?>> measured(String field) {
        return IN_ORDER_OF_KEYS.stream()
                .filter(column -> column.field().equals(field) && !NOT_MEASURED.contains(column))
                .findFirst();
    }
}
