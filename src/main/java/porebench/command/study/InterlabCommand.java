package porebench.command.study;

import java.math.BigDecimal;
import java.util.List;
import picocli.CommandLine.Command;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.LaboratoryLevels;
import porebench.evidence.study.ValueRow;
import porebench.method.Problem;
import porebench.record.KeptStudy;

/** {@code interlab}: how far laboratories agree that tested the same material. */
@Command(name = "interlab")
public final class InterlabCommand extends StudyCommand {
    public InterlabCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    KeptStudy.Layout layout() {
        return KeptStudy.Layout.LABORATORIES;
    }

    @Override
    CommandOutcome study(Sheet<ValueRow> sheet, String source, List<Problem> problems) {
        problems.addAll(LaboratoryLevels.check(sheet));
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        BigDecimal step =
                step(sheet.values().stream().mapToDouble(ValueRow::value).toArray());
        LaboratoryLevels levels = LaboratoryLevels.of(sheet, step.doubleValue());
        problems.addAll(levels.doubts());
        return CommandOutcome.done(new InterlabReport(levels, step, words(), shown()), problems);
    }
}
