package porebench.evidence.field;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.book.Version;

/**
 * One field reading with what was made of it.
 *
 * @param reading the reading as it is kept now
 * @param version the version of it that is kept; empty of one that is not kept
 * @param now what follows from the lab book as it stands
 * @param said what followed when the reading was first kept, where a person was told something else then
 */
public record FieldOutcome(
        FieldReading reading, Optional<Version<FieldReading>> version, FieldFinding now, Optional<Said> said) {
    /**
     * What was said of a reading at another time.
     *
     * @param at when the reading was first kept
     * @param reading the reading as it was kept first
     * @param finding what was made of it
     */
    public record Said(Instant at, FieldReading reading, FieldFinding finding) {}

    /** Returns the air of the load; empty where the reading is marked and not corrected. */
    public Optional<FieldAir> air() {
        return now.air();
    }

    /** Returns everything to be told of it: why it is not corrected, what is doubtful, and that something else was said before. */
    public List<Problem> problems() {
        List<Problem> problems = new ArrayList<>(now.mark().stream().toList());
        problems.addAll(now.doubts());
        said.ifPresent(any -> problems.add(
                Problem.warning("factor", "field.said-otherwise", reading.id().text())));
        return problems;
    }
}
