package porebench.desk.trial;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import porebench.method.MeterType;
import porebench.record.Trial;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;

/** The columns of a trial that the entry form has, and which of them it shows. */
final class BenchFields {
    /** What names the trial. */
    static final List<Column<Trial, ?>> HEAD = List.of(TrialColumns.ID, TrialColumns.TESTED_AT, TrialColumns.OPERATOR);

    /** What is entered at the bench, in its order. */
    static final List<Column<Trial, ?>> BENCH = List.of(
            TrialColumns.METER,
            TrialColumns.ELEVATION,
            TrialColumns.FINE,
            TrialColumns.COARSE,
            TrialColumns.SOAK,
            TrialColumns.WATER,
            TrialColumns.WITHDRAWN,
            TrialColumns.GAUGE,
            TrialColumns.H1,
            TrialColumns.H2,
            TrialColumns.LEAK,
            TrialColumns.REMARKS);

    /** All, as they stand on the page. */
    static final List<Column<Trial, ?>> ALL =
            Stream.of(HEAD, BENCH).flatMap(List::stream).toList();

    /** All, as the keys go through them. */
    static final List<Column<Trial, ?>> IN_ORDER_OF_KEYS =
            Stream.of(BENCH, HEAD).flatMap(List::stream).toList();

    private static final Set<Column<Trial, ?>> OF_TYPE_A =
            Set.of(TrialColumns.ELEVATION, TrialColumns.H1, TrialColumns.H2);
    private static final Set<Column<Trial, ?>> OF_TYPE_B = Set.of(TrialColumns.WITHDRAWN, TrialColumns.GAUGE);
    private static final Set<Column<Trial, ?>> NOT_MEASURED =
            Set.of(TrialColumns.LEAK, TrialColumns.REMARKS, TrialColumns.ID, TrialColumns.OPERATOR);

    private BenchFields() {}

    /** Returns whether a column is asked for on a type of meter. */
    static boolean isAsked(Column<Trial, ?> column, MeterType type) {
        return !(type == MeterType.A ? OF_TYPE_B : OF_TYPE_A).contains(column);
    }

    /** Returns the column that a problem names, if something measured stands in it or the day, on which the meter depends. */
    static Optional<Column<Trial, ?>> measured(String field) {
        return IN_ORDER_OF_KEYS.stream()
                .filter(column -> column.field().equals(field) && !NOT_MEASURED.contains(column))
                .findFirst();
    }
}
