package porebench.command.study;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.ValueRow;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.hold.AirPair;
import porebench.method.hold.Hold;
import porebench.quantity.Density;

/** {@code holds}: whether a factor still holds, from corrected air beside the density of the concrete. */
@Command(name = "holds")
public final class HoldsCommand extends OneCommand {
    private static final String ID = "reading_id";
    private static final String AIR = "air_pct";
    private static final String AIR_FREE = "air-free-density";

    @Option(names = "--pairs", required = true, paramLabel = "<file>")
    private Path pairs;

    @Option(names = "--" + AIR_FREE, required = true, paramLabel = "<number>")
    private BigDecimal airFree;

    @Option(names = "--step", paramLabel = "<percent>")
    private BigDecimal step = new BigDecimal("0.1");

    public HoldsCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        checkPositive(AIR_FREE, airFree, problems);
        checkPositive("step", step, problems);
        Sheet<ValueRow> sheet = ports().sheets().get().table(pairs, List.of(ID, AIR));
        problems.addAll(sheet.problems());
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        List<AirPair> read = read(sheet, problems);
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        if (read.isEmpty()) {
            return CommandOutcome.refused(Problem.error("value", "command.no-number", pairs.toString()));
        }
        return CommandOutcome.done(HoldsReport.of(Hold.of(read, step.doubleValue() / 2), words(), shown()), problems);
    }

    private List<AirPair> read(Sheet<ValueRow> sheet, List<Problem> problems) {
        List<AirPair> read = new ArrayList<>();
        for (Sheet.Row<ValueRow> row : sheet.rows()) {
            String name = row.value().factors().getOrDefault(ID, "");
            String air = row.value().factors().getOrDefault(AIR, "");
            Place place = Place.of(sheet.file(), row.line());
            double density = row.value().value();
            if (!(density > 0)) {
                problems.add(Problem.error(
                                "value",
                                "hold.density-not-positive",
                                name,
                                row.value().number())
                        .at(place));
                continue;
            }
            try {
                double pressure = new BigDecimal(air).doubleValue();
                AirPair pair = AirPair.of(name, pressure, new Density(airFree.doubleValue()), new Density(density));
                if (pair.isDoubted()) {
                    problems.add(Problem.warning(
                                    "value",
                                    "hold.density-doubted",
                                    name,
                                    shown().fixed(pair.gravimetricPercent(), 1),
                                    shown().fixed(AirPair.LEAST_GRAVIMETRIC, 0))
                            .at(place));
                }
                read.add(pair);
            } catch (NumberFormatException e) {
                problems.add(Problem.notANumber(AIR, AIR, air).at(place));
            }
        }
        return read;
    }
}
