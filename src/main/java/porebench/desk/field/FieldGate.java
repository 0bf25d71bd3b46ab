package porebench.desk.field;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.method.Problem;
import porebench.record.FieldReading;

/**
 * Asks what is against a reading that was typed, and what it comes to.
 *
 * @param reading the reading as typed
 * @param isNew whether it is new, so that it is given a name
 * @param guard how many standard uncertainties wide a guard band is laid; empty for none
 * @param now the moment, by the laboratory's clock
 */
record FieldGate(FieldReading reading, boolean isNew, Optional<BigDecimal> guard, LocalDateTime now)
        implements Question<FieldGate.Held> {
    /**
     * What was found.
     *
     * @param reading the reading as it can be kept
     * @param problems what is wrong with it or doubtful
     * @param air what is made of it; empty where it is marked
     * @param marks why it is marked and not corrected
     */
    record Held(FieldReading reading, List<Problem> problems, Optional<FieldLine.Air> air, List<Problem> marks) {
        Held {
            problems = List.copyOf(problems);
            marks = List.copyOf(marks);
        }

        List<Problem> errors() {
            return problems.stream().filter(Problem::isError).toList();
        }

        List<Problem> doubts() {
            return problems.stream().filter(problem -> !problem.isError()).toList();
        }
    }

    @Override
    public Held answer(Reading seen) {
        return FieldRows.held(seen, this);
    }
}
