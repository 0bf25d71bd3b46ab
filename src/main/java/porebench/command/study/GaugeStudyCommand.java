package porebench.command.study;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.CrossedReadings;
import porebench.evidence.study.ValueRow;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.KeptStudy;
import porebench.statistics.variance.GaugeStudy;

/** {@code gauge-study}: what of the spread of readings comes from the samples, and what from reading them. */
@Command(name = "gauge-study")
public final class GaugeStudyCommand extends StudyCommand {
    static final double CONFIDENCE = 0.95;

    /** Any number would do; the same one gives the same interval on any day. */
    private static final long SEED = 1;

    @Option(names = "--no-interaction")
    private boolean isPooled;

    @Option(names = "--pooling-level", paramLabel = "<p>")
    private BigDecimal poolingLevel = BigDecimal.valueOf(GaugeStudy.POOLING_LEVEL);

    public GaugeStudyCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    KeptStudy.Layout layout() {
        return KeptStudy.Layout.OPERATORS;
    }

    @Override
    CommandOutcome study(Sheet<ValueRow> sheet, String source, List<Problem> problems) {
        Answer<CrossedReadings> read = CrossedReadings.of(sheet);
        problems.addAll(read.problems());
        Optional<CrossedReadings> readings = read.value();
        if (poolingLevel.signum() <= 0 || poolingLevel.compareTo(BigDecimal.ONE) >= 0) {
            problems.add(Problem.error("pooling-level", "command.level-outside", poolingLevel));
        }
        if (Problem.anyError(problems) || readings.isEmpty()) {
            return CommandOutcome.refused(problems);
        }
        GaugeStudy study = GaugeStudy.of(readings.get().readings(), !isPooled, CONFIDENCE, SEED);
        problems.addAll(
                withinDivision(study.repeatability().raw(), step(readings.get().all())));
        return CommandOutcome.done(new GaugeStudyReport(study, poolingLevel.doubleValue(), words(), shown()), problems);
    }

    /** Returns the doubt that repeats differ by less than a division of the scale gives by itself. */
    static List<Problem> withinDivision(double variance, BigDecimal step) {
        double ofDivision = step.doubleValue() * step.doubleValue() / 12;
        return variance < ofDivision
                ? List.of(Problem.warning("division", "command.repeatability-within-division", step))
                : List.of();
    }
}
