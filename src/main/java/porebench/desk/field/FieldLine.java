package porebench.desk.field;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.evidence.paper.FieldList;
import porebench.evidence.paper.SievedAirs;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.book.Version;

/**
 * A reading on the page, with what is made of it.
 *
 * @param version the reading as it is kept
 * @param now what follows from the records as they are now; empty where the reading is marked
 * @param then what was said at the time; empty where that is the same as now
 * @param marks why it is marked and not corrected, or what is doubtful about the air
 */
record FieldLine(Version<FieldReading> version, Optional<Air> now, Optional<Said> then, List<Problem> marks) {
    FieldLine {
        marks = List.copyOf(marks);
    }

    /**
     * What was made of a reading.
     *
     * @param revision the revision whose factor was subtracted
     * @param factorPercent the factor, in % air
     * @param reportedPercent the air content as it is reported, in % air
     * @param expandedPercent its expanded uncertainty at 95 %, in % air; empty where none is known
     * @param verdict the symbol of how it is judged
     * @param conditions the standing conditions under which the factor holds; may be empty
     * @param spread the air of the full mixture and of the mortar of a wet-sieved concrete; empty of any other, and where they are not known
     */
    record Air(
            int revision,
            BigDecimal factorPercent,
            BigDecimal reportedPercent,
            Optional<BigDecimal> expandedPercent,
            String verdict,
            String conditions,
            Optional<SievedAirs.Spread> spread) {}

    /**
     * What was said of a reading when it was kept first.
     *
     * @param air what was made of it; empty where it was marked then
     */
    record Said(Optional<Air> air) {}

    FieldReading reading() {
        return version.value();
    }

    String id() {
        return reading().recordId();
    }

    boolean isStruck() {
        return !reading().counts();
    }

    /** Returns what is made of it now; nothing of a reading that is struck. */
    Optional<Air> counted() {
        return now.filter(air -> !isStruck());
    }

    /** Returns whether it is marked and not corrected although it counts. */
    boolean isMarked() {
        return !isStruck() && now.isEmpty();
    }

    /** Returns the symbol of how it is judged; that it is struck or marked where it is not. */
    String verdict() {
        return isStruck() ? FieldList.STRUCK : now.map(Air::verdict).orElse(FieldList.MARKED);
    }
}
