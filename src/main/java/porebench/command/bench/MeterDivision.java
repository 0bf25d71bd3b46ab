package porebench.command.bench;

import java.math.BigDecimal;
import java.util.List;
import picocli.CommandLine.Option;
import porebench.evidence.MeterScale;
import porebench.method.Problem;

/** {@code --division}: the division of the meter's scale, in % air; the usual one unless another is given. */
final class MeterDivision {
    private static final BigDecimal WIDEST = BigDecimal.TEN;

    @Option(names = "--division", paramLabel = "<percent>")
    private BigDecimal percent = BigDecimal.valueOf(MeterScale.USUAL_DIVISION_PERCENT);

    BigDecimal percent() {
        return percent;
    }

    /** Adds the problem that the division cannot be meant. */
    void check(List<Problem> problems) {
        if (percent.signum() <= 0 || percent.compareTo(WIDEST) > 0) {
            problems.add(Problem.error("division", "air.division-out-of-range", percent));
        }
    }
}
