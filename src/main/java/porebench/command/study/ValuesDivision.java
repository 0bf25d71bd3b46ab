package porebench.command.study;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import porebench.command.reply.OneCommand;
import porebench.evidence.study.FinestStep;
import porebench.method.Problem;

/** {@code --division}: the division of the scale that values were read from, in their unit. */
final class ValuesDivision {
    @Option(names = "--division", paramLabel = "<number>")
    private @Nullable BigDecimal stated;

    /** Adds the problem that the division cannot be meant. */
    void check(List<Problem> problems) {
        OneCommand.checkPositive("division", stated, problems);
    }

    /** Returns the division that was stated, or what the values tell of it. */
    BigDecimal of(double... values) {
        return stated == null ? FinestStep.of(values) : stated;
    }
}
