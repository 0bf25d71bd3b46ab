package porebench.command.study;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.evidence.Evidence;
import porebench.evidence.hold.HoldText;
import porebench.evidence.hold.MixHold;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.ValueFile;
import porebench.evidence.study.ValueRow;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.hold.AirPair;
import porebench.method.hold.Hold;
import porebench.quantity.Density;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;

/** {@code holds}: whether a factor still holds, from corrected air beside the density of the concrete. */
@Command(name = "holds")
public final class HoldsCommand extends OneCommand {
    private static final String ID = ValueFile.PAIRS.asked().get(0);
    private static final String AIR = ValueFile.PAIRS.asked().get(1);
    private static final String AIR_FREE = "air-free-density";

    @ArgGroup(multiplicity = "1")
    private Of of = new Of();

    /** Where the pairs come from. */
    static final class Of {
        @ArgGroup(exclusive = false)
        private @Nullable OfFile file;

        @ArgGroup(exclusive = false)
        private @Nullable OfBook kept;
    }

    /** A file of pairs. */
    static final class OfFile {
        @Option(names = "--pairs", required = true, paramLabel = "<file>")
        private Path pairs;

        @Option(names = "--" + AIR_FREE, required = true, paramLabel = "<number>")
        private BigDecimal airFree;

        @Option(names = "--step", paramLabel = "<percent>")
        private BigDecimal step = new BigDecimal("0.1");
    }

    /** The readings of a mix in a lab book. */
    static final class OfBook {
        @Option(names = "--book", required = true, paramLabel = "<file>")
        private Path book;

        @Option(names = "--mix-id", required = true, paramLabel = "<id>")
        private MixId mixId;
    }

    public HoldsCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        return of.kept == null ? ofFile(Objects.requireNonNull(of.file)) : ofBook(of.kept);
    }

    private CommandOutcome ofBook(OfBook kept) {
        try (LabBook book = ports().shelf().get().open(kept.book)) {
            Optional<Evidence> evidence = Evidence.of(book, kept.mixId);
            if (evidence.isEmpty()) {
                return CommandOutcome.refused(
                        Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), kept.mixId.text()));
            }
            Answer<MixHold> answer = MixHold.of(book, evidence.get(), here().now());
            return marked(
                    book,
                    answer.value()
                            .map(hold -> CommandOutcome.done(
                                    new MixHoldReport(text(), words(), shown()).of(hold), hold.notes()))
                            .orElseGet(() -> CommandOutcome.refused(answer.problems())));
        }
    }

    private HoldText text() {
        return HoldText.in(here().locale());
    }

    private CommandOutcome ofFile(OfFile file) {
        List<Problem> problems = new ArrayList<>();
        checkPositive(AIR_FREE, file.airFree, problems);
        checkPositive("step", file.step, problems);
        Sheet<ValueRow> sheet = ports().sheets().get().table(file.pairs, ValueFile.PAIRS.asked());
        problems.addAll(sheet.problems());
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        List<AirPair> read = read(sheet, file.airFree, problems);
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        if (read.isEmpty()) {
            return CommandOutcome.refused(Problem.error("value", "command.no-number", file.pairs.toString()));
        }
        return CommandOutcome.done(
                HoldsReport.of(Hold.of(read, file.step.doubleValue() / 2), text(), words(), shown()), problems);
    }

    private List<AirPair> read(Sheet<ValueRow> sheet, BigDecimal airFree, List<Problem> problems) {
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
