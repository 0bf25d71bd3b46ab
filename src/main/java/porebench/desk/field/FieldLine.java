package porebench.desk.field;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.book.Version;

/**
 * A reading on the page, with what is made of it.
 *
 * @param version the reading as it is kept
 * @param now what follows from the records as they are now; empty where the reading is marked
 * @param then what was said at the time; empty where that was nothing, or is the same as now
 * @param marks why it is marked and not corrected; empty where it is corrected
 */
record FieldLine(Version<FieldReading> version, Optional<Air> now, Optional<Air> then, List<Problem> marks) {
    FieldLine {
        marks = List.copyOf(marks);
    }

    /**
     * What was made of a reading.
     *
     * @param revision the revision whose factor was subtracted
     * @param factorPercent the factor, in % air
     * @param reportedPercent the air content as it is reported, in % air
     * @param expandedPercent its expanded uncertainty, in % air; empty where none is known
     * @param verdict how it is judged, in words; empty where the mix has no limits
     */
    record Air(
            int revision,
            BigDecimal factorPercent,
            BigDecimal reportedPercent,
            Optional<BigDecimal> expandedPercent,
            String verdict) {}

    FieldReading reading() {
        return version.value();
    }

    String id() {
        return reading().recordId();
    }

    boolean isStruck() {
        return !reading().counts();
    }

    /** Returns whether it is marked and not corrected although it counts. */
    boolean isMarked() {
        return !isStruck() && now.isEmpty();
    }
}
