package porebench.evidence.paper;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
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
     */
    public record Air(
            int revision, BigDecimal factorPercent, BigDecimal reportedPercent, Optional<BigDecimal> expandedPercent) {}
}
