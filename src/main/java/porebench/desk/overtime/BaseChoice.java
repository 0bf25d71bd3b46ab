package porebench.desk.overtime;

import java.time.LocalDate;
import porebench.quantity.Require;
import porebench.statistics.control.ChartTerms;

/** From which points the limits come. */
sealed interface BaseChoice {
    /** What is taken unless a person says otherwise: as many first points as lasting limits need. */
    First USUAL = new First(ChartTerms.FEWEST_FOR_LASTING_LIMITS);

    /**
     * The first points.
     *
     * @param count how many, at least 2
     */
    record First(int count) implements BaseChoice {
        public First {
            Require.atLeast("count", count, 2);
        }
    }

    /**
     * The points of some days.
     *
     * @param from the first day
     * @param to the last day
     */
    record Between(LocalDate from, LocalDate to) implements BaseChoice {
        boolean holds(LocalDate day) {
            return !day.isBefore(from) && !day.isAfter(to);
        }
    }
}
