package porebench.command.study;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.ValueFile;
import porebench.evidence.study.ValueRow;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.profile.Profiles;

/** {@code stats}: what a file of numbers amounts to, as one set or as many. */
@Command(name = "stats")
public final class StatsCommand extends OneCommand {
    @Option(names = "--values", required = true, paramLabel = "<file>")
    private Path values;

    @Option(names = "--sets")
    private boolean sets;

    @Mixin
    private final ValuesDivision division = new ValuesDivision();

    @Option(names = "--repeatability", paramLabel = "<number>")
    private @Nullable BigDecimal repeatability;

    public StatsCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        division.check(problems);
        checkPositive("repeatability", repeatability, problems);
        return sets ? manySets(problems) : oneSet(problems);
    }

    private CommandOutcome oneSet(List<Problem> problems) {
        Sheet<Double> sheet = ports().sheets().get().values(values);
        double[] numbers =
                sheet.values().stream().mapToDouble(Double::doubleValue).toArray();
        return refusal(sheet, problems)
                .orElseGet(() -> CommandOutcome.done(
                        new StatsReport(numbers, step(numbers), sigma(), words(), shown()), problems));
    }

    private CommandOutcome manySets(List<Problem> problems) {
        Sheet<ValueRow> sheet = ports().sheets().get().table(values, ValueFile.SETS.asked());
        Subgroups groups = Subgroups.of(sheet, SetsReport.COLUMN);
        return refusal(sheet, problems)
                .orElseGet(() -> CommandOutcome.done(
                        new SetsReport(groups, step(groups.all()), sigma(), words(), shown()), problems));
    }

    private Optional<CommandOutcome> refusal(Sheet<?> sheet, List<Problem> problems) {
        problems.addAll(sheet.problems());
        if (sheet.rows().isEmpty() && !Problem.anyError(problems)) {
            problems.add(Problem.error("values", "command.no-number", values.toString()));
        }
        return Problem.anyError(problems) ? Optional.of(CommandOutcome.refused(problems)) : Optional.empty();
    }

    private double step(double[] numbers) {
        return division.of(numbers).doubleValue();
    }

    private double sigma() {
        return repeatability == null
                ? Profiles.standard().number(FigureName.REPEATABILITY)
                : repeatability.doubleValue();
    }
}
