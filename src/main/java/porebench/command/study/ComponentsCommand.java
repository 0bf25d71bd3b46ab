package porebench.command.study;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.LayeredReadings;
import porebench.evidence.study.ValueRow;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.KeptStudy;
import porebench.statistics.Judged;
import porebench.statistics.variance.CrossedVariances;
import porebench.statistics.variance.VarianceLayers;

/** {@code components}: how much each of several layers varies, groups within groups or crossing one another. */
@Command(name = "components")
public final class ComponentsCommand extends StudyCommand {
    @Option(names = "--crossed")
    private boolean isCrossed;

    public ComponentsCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    KeptStudy.Layout layout() {
        return KeptStudy.Layout.LAYERS;
    }

    @Override
    CommandOutcome study(Sheet<ValueRow> sheet, String source, List<Problem> problems) {
        Answer<LayeredReadings> read = LayeredReadings.of(sheet);
        problems.addAll(read.problems());
        Optional<LayeredReadings> readings = read.value();
        if (Problem.anyError(problems) || readings.isEmpty()) {
            return CommandOutcome.refused(problems);
        }
        return isCrossed ? crossed(readings.get(), source, problems) : nested(readings.get(), problems);
    }

    private CommandOutcome crossed(LayeredReadings readings, String source, List<Problem> problems) {
        problems.addAll(readings.checkCrossing().stream()
                .map(problem -> problem.at(Place.of(source)))
                .toList());
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        Judged<CrossedVariances> found =
                CrossedVariances.of(readings.paths(), GaugeStudyCommand.CONFIDENCE, readings.values());
        found.meaningful()
                .ifPresent(done -> problems.addAll(
                        GaugeStudyCommand.withinDivision(done.values().variance(), step(readings.values()))));
        return CommandOutcome.done(new CrossedReport(readings.layers(), found, words(), shown()), problems);
    }

    private CommandOutcome nested(LayeredReadings readings, List<Problem> problems) {
        double[] numbers = readings.values();
        Judged<VarianceLayers> layers = VarianceLayers.of(readings.paths(), GaugeStudyCommand.CONFIDENCE, numbers);
        layers.meaningful()
                .filter(found -> found.values().standing() != VarianceLayers.Standing.NOT_TOLD_APART)
                .ifPresent(found -> problems.addAll(GaugeStudyCommand.withinDivision(
                        found.values().variance().orElse(0), step(numbers))));
        return CommandOutcome.done(new ComponentsReport(readings.layers(), layers, words(), shown()), problems);
    }
}
