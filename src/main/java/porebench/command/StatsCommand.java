package porebench.command;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.profile.Profiles;
import porebench.record.port.Sheet;
import porebench.record.study.FinestStep;

/** {@code stats}: what a file of numbers amounts to. */
@Command(name = "stats")
final class StatsCommand extends OneCommand {
    @Option(names = "--values", required = true, paramLabel = "<file>")
    private Path values;

    @Option(names = "--division", paramLabel = "<number>")
    private @Nullable BigDecimal division;

    @Option(names = "--repeatability", paramLabel = "<number>")
    private @Nullable BigDecimal repeatability;

    StatsCommand(Surroundings here, Ports ports) {
        super(here, ports);
    }

    @Override
    Outcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        checkPositive("division", division, problems);
        checkPositive("repeatability", repeatability, problems);
        Sheet<Double> sheet = ports().sheets().get().values(values);
        problems.addAll(sheet.problems());
        double[] numbers =
                sheet.values().stream().mapToDouble(Double::doubleValue).toArray();
        if (numbers.length == 0 && !Problem.anyError(problems)) {
            problems.add(Problem.error("values", "command.no-number", values.toString()));
        }
        if (Problem.anyError(problems)) {
            return Outcome.refused(problems);
        }
        double step = (division == null ? FinestStep.of(numbers) : division).doubleValue();
        double sigma = repeatability == null
                ? Profiles.standard().number(FigureName.REPEATABILITY)
                : repeatability.doubleValue();
        return Outcome.done(new StatsReport(numbers, step, sigma, words(), shown()), problems);
    }
}
