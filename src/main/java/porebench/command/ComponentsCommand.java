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
import porebench.method.Problem;
import porebench.record.study.FinestStep;
import porebench.record.study.LayeredReadings;
import porebench.statistics.Judged;
import porebench.statistics.VarianceLayers;

/** {@code components}: how much each of several layers of groups within groups varies. */
@Command(name = "components")
final class ComponentsCommand extends OneCommand {
    @Option(names = "--values", required = true, paramLabel = "<file>")
    private Path values;

    @Option(names = "--division", paramLabel = "<number>")
    private @Nullable BigDecimal division;

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
        double[] numbers = readings.get().values();
        Judged<VarianceLayers> layers =
                VarianceLayers.of(readings.get().paths(), GaugeStudyCommand.CONFIDENCE, numbers);
        BigDecimal step = division == null ? FinestStep.of(numbers) : division;
        layers.meaningful()
                .filter(found -> found.values().standing() != VarianceLayers.Standing.NOT_TOLD_APART)
                .ifPresent(found -> problems.addAll(GaugeStudyCommand.withinDivision(
                        found.values().variance().orElse(0), step)));
        return Outcome.done(new ComponentsReport(readings.get().layers(), layers, words(), shown()), problems);
    }
}
