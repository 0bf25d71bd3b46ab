package porebench.command;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.method.Problem;
import porebench.record.port.Sheet;
import porebench.record.port.ValueRow;
import porebench.record.study.FinestStep;
import porebench.record.study.LaboratoryLevels;

/** {@code interlab}: how far laboratories agree that tested the same material. */
@Command(name = "interlab")
final class InterlabCommand extends OneCommand {
    @Option(names = "--values", required = true, paramLabel = "<file>")
    private Path values;

    @Option(names = "--division", paramLabel = "<number>")
    private @Nullable BigDecimal division;

    InterlabCommand(Surroundings here, Ports ports) {
        super(here, ports);
    }

    @Override
    Outcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        checkPositive("division", division, problems);
        Sheet<ValueRow> sheet = ports().sheets().get().table(values, LaboratoryLevels.COLUMNS);
        problems.addAll(sheet.problems());
        if (sheet.rows().isEmpty() && !Problem.anyError(problems)) {
            problems.add(Problem.error("values", "command.no-number", values.toString()));
        }
        if (Problem.anyError(problems)) {
            return Outcome.refused(problems);
        }
        double[] all = sheet.values().stream().mapToDouble(ValueRow::value).toArray();
        BigDecimal step = division == null ? FinestStep.of(all) : division;
        LaboratoryLevels levels = LaboratoryLevels.of(sheet, step.doubleValue());
        problems.addAll(levels.doubts(sheet.file()));
        return Outcome.done(new InterlabReport(levels, step, words(), shown()), problems);
    }
}
