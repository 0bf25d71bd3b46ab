package porebench.desk.mix;

import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.MixDesign;

/**
 * What a draft says when it is read: the mix design, unless a problem forbids one, its figures and every problem.
 *
 * @param mix the mix design; empty exactly when one of the problems is an error
 * @param figures the figures of its batch; empty while some text of it cannot be read
 * @param problems everything wrong or doubtful
 */
record MixReading(Optional<MixDesign> mix, Optional<BatchFigures> figures, List<Problem> problems) {
    MixReading {
        problems = List.copyOf(problems);
    }
}
