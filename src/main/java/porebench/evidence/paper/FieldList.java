package porebench.evidence.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.Digits;
import porebench.record.FieldReading;
import porebench.record.Laboratory;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/**
 * A list of field readings on paper: what crews read, what was subtracted, the air as reported and how it is judged.
 *
 * @param laboratory whose it is; empty when the lab book does not say
 * @param moment when it stands so, by the laboratory's clock
 * @param days the days of which readings are on it
 * @param mix the mix whose readings are on it; empty where those of all mixes are
 * @param guard how many standard uncertainties wide the guard band is; empty where there is none
 * @param lines its lines, in the order in which they are printed
 * @param head how far the lab book reached
 */
public record FieldList(
        Optional<Laboratory> laboratory,
        LocalDateTime moment,
        Days days,
        Optional<MixId> mix,
        Optional<BigDecimal> guard,
        List<Line> lines,
        Head head)
        implements Printed {
    /** How a reading is judged that was struck. */
    public static final String STRUCK = "struck";
    /** How a reading is judged that is not corrected. */
    public static final String MARKED = "not-corrected";
    /** How a reading is judged whose guard band cannot be laid. */
    public static final String NOT_JUDGED = "none";

    public FieldList {
        lines = List.copyOf(lines);
    }

    /**
     * Some days.
     *
     * @param first the first
     * @param last the last
     */
    public record Days(LocalDate first, LocalDate last) {}

    /**
     * A reading.
     *
     * @param reading the reading as it is kept
     * @param air what was made of it; empty where it is marked and not corrected
     * @param verdict how it is judged, by its symbol; that it is marked or struck where it is not
     * @param words the same in words
     * @param notes why it is marked or struck, what is doubtful, and what was said at the time where that differs
     */
    public record Line(FieldReading reading, Optional<Air> air, String verdict, String words, List<String> notes) {
        public Line {
            notes = List.copyOf(notes);
        }
    }

    /**
     * What was made of a reading.
     *
     * @param revision the revision whose factor was subtracted
     * @param factorPercent the factor, in % air
     * @param reportedPercent the air content as it is reported, in % air
     * @param expandedPercent its expanded uncertainty at 95 %, in % air; empty where it is not known
     * @param spread the air of the full mixture and of the mortar of a wet-sieved concrete; empty of any other, and where they are not known
     */
    public record Air(
            int revision,
            BigDecimal factorPercent,
            BigDecimal reportedPercent,
            Optional<BigDecimal> expandedPercent,
            Optional<SievedAirs.Spread> spread) {}

    /** Returns an expanded uncertainty, in % air, with the digits with which it is shown; empty where it is not known. */
    public static Optional<BigDecimal> shown(OptionalDouble expandedPercent) {
        return expandedPercent.isPresent()
                ? Optional.of(
                        BigDecimal.valueOf(expandedPercent.getAsDouble()).setScale(Digits.AIR, RoundingMode.HALF_EVEN))
                : Optional.empty();
    }
}
