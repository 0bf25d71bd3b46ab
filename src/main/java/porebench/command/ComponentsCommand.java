package porebench.command;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.study.FinestStep;
import porebench.record.study.LayeredReadings;
import porebench.statistics.CrossedVariances;
import porebench.statistics.Judged;
import porebench.statistics.VarianceLayers;

/** {@code components}: how much each of several layers varies, groups within groups or crossing one another. */
@Command(name = "components")
final class ComponentsCommand extends OneCommand {
    @Option(names = "--values", required = true, paramLabel = "<file>")
    private Path values;

    @Option(names = "--division", paramLabel = "<number>")
    private @Nullable BigDecimal division;

    @Option(names = "--crossed")
    private boolean isCrossed;

    ComponentsCommand(Surroundings here, Ports ports) {
        super(here, ports);
    }

    @Override
    Outcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        checkPositive("division", division, problems);
        Answer<LayeredReadings> read = LayeredReadings.of(ports().sheets().get().table(values, List.of()));
        problems.addAll(read.problems());
        Optional<LayeredReadings> readings = read.value();
        if (Problem.anyError(problems) || readings.isEmpty()) {
            return Outcome.refused(problems);
        }
        return isCrossed ? crossed(readings.get(), problems) : nested(readings.get(), problems);
    }

    private Outcome crossed(LayeredReadings readings, List<Problem> problems) {
        problems.addAll(readings.checkCrossing().stream()
                .map(problem -> problem.at(new Place(values.toString(), 0, 0)))
                .toList());
        if (Problem.anyError(problems)) {
            return Outcome.refused(problems);
        }
        Judged<CrossedVariances> found =
                CrossedVariances.of(readings.paths(), GaugeStudyCommand.CONFIDENCE, readings.values());
        found.meaningful()
                .ifPresent(done -> problems.addAll(
                        GaugeStudyCommand.withinDivision(done.values().variance(), step(readings.values()))));
        return Outcome.done(new CrossedReport(readings.layers(), found, words(), shown()), problems);
    }

    private BigDecimal step(double... numbers) {
        return division == null ? FinestStep.of(numbers) : division;
    }

    private Outcome nested(LayeredReadings readings, List<Problem> problems) {
        double[] numbers = readings.values();
        Judged<VarianceLayers> layers = VarianceLayers.of(readings.paths(), GaugeStudyCommand.CONFIDENCE, numbers);
        layers.meaningful()
                .filter(found -> found.values().standing() != VarianceLayers.Standing.NOT_TOLD_APART)
                .ifPresent(found -> problems.addAll(GaugeStudyCommand.withinDivision(
                        found.values().variance().orElse(0), step(numbers))));
        return Outcome.done(new ComponentsReport(readings.layers(), layers, words(), shown()), problems);
    }
}
