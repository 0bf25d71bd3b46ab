package porebench.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.method.Problem;
import porebench.record.port.Sheet;
import porebench.statistics.GrubbsTest;
import porebench.statistics.Summary;

/** {@code stats}: what a file of numbers amounts to. */
@Command(name = "stats")
final class StatsCommand extends OneCommand {
    @Option(names = "--values", required = true, paramLabel = "<file>")
    private Path values;

    StatsCommand(Surroundings here, Ports ports) {
        super(here, ports);
    }

    @Override
    Outcome carryOut() {
        List<Problem> problems = new ArrayList<>();
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
        return Outcome.done(new StatsReport(numbers.length, Summary.of(numbers), GrubbsTest.of(numbers)), problems);
    }

    private final class StatsReport implements Report {
        private final int count;
        private final Summary summary;
        private final Optional<GrubbsTest> grubbs;

        StatsReport(int count, Summary summary, Optional<GrubbsTest> grubbs) {
            this.count = count;
            this.summary = summary;
            this.grubbs = grubbs;
        }

        @Override
        public void json(JsonFields json) {
            json.whole("count", count);
            json.number("mean", summary.mean());
            json.number("standardDeviation", summary.standardDeviation());
            json.number("lag1Autocorrelation", summary.lag1Autocorrelation());
            json.group("grubbs", grubbs, (fields, test) -> {
                fields.number("statistic", test.statistic());
                fields.number("p", test.p());
                fields.whole("index", test.index());
            });
        }

        @Override
        public void text(TextPage page) {
            page.row(words().say("stats.count"), Integer.toString(count), "");
            page.row(words().say("stats.mean"), shown().sixDigits(summary.mean()), "");
            page.row(words().say("stats.standard-deviation"), shown().sixDigits(summary.standardDeviation()), "");
            page.row(words().say("stats.lag1"), shown().sixDigits(summary.lag1Autocorrelation()), "");
            grubbs.ifPresent(test -> {
                page.row(words().say("stats.grubbs"), shown().sixDigits(test.statistic()), "");
                page.row(words().say("stats.grubbs-p"), shown().sixDigits(test.p()), "");
                page.row(words().say("stats.grubbs-index"), Integer.toString(test.index()), "");
            });
            if (grubbs.isEmpty()) {
                page.line(words().say(count < 3 ? "stats.grubbs-too-few" : "stats.grubbs-all-equal"));
            }
        }
    }
}
