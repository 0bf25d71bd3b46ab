package porebench.command.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.Reply;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.StopReport;
import porebench.command.reply.TextPage;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.method.Dates;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.trial.DeterminationSummary;
import porebench.method.trial.StopRule;
import porebench.record.id.DeterminationId;

/** Determinations with every trial's factor and doubts, and what the trials say together. */
public final class FactorReport implements Report {
    private final Texts words;
    private final NumberText shown;
    private final ProblemText problemText;
    private final StopReport stopReport;
    private final List<JudgedDetermination> determinations;
    private final Map<DeterminationId, StopRule> stops;

    /**
     * Reports determinations.
     *
     * @param here the machine it runs on
     * @param determinations the determinations
     * @param stops what the stop rule says of those that have a trial which counts
     */
    public FactorReport(Machine here, List<JudgedDetermination> determinations, Map<DeterminationId, StopRule> stops) {
        this.stopReport = new StopReport(here.locale());
        this.stops = Map.copyOf(stops);
        this.words = here.words();
        this.shown = new NumberText(here.locale());
        this.problemText = ProblemText.in(here.locale(), here.zone());
        this.determinations = List.copyOf(determinations);
    }

    @Override
    public void json(JsonFields json) {
        json.list("determinations", determinations, this::determination);
    }

    private void determination(JsonFields json, JudgedDetermination one) {
        Optional<DeterminationSummary> summary = one.summary();
        json.text("determinationId", one.determination().value().id().text());
        json.text("mixId", one.determination().value().mixId().text());
        json.flag("simulated", isSimulated(one));
        json.whole("count", one.trials().size());
        json.whole("accepted", one.counted());
        json.list("trials", one.trials(), trialLayout()::json);
        json.number("meanPercent", summary.map(s -> s.summary().mean()).orElse(Double.NaN));
        json.number(
                "standardDeviationPercent",
                summary.map(s -> s.summary().standardDeviation()).orElse(OptionalDouble.empty()));
        json.number("rangePercent", summary.map(s -> s.summary().range()).orElse(Double.NaN));
        json.group("confidence95", summary.flatMap(DeterminationSummary::interval), (fields, interval) -> {
            fields.number("low", interval.low());
            fields.number("high", interval.high());
        });
        json.group("rangeCheck", summary.flatMap(DeterminationSummary::rangeCheck), (fields, check) -> {
            fields.number("limitPercent", check.limit());
            fields.flag("passes", check.passes());
        });
        json.number("reportedPercent", summary.map(DeterminationSummary::reportedPercent));
        json.number(
                "expandedUncertaintyPercent",
                summary.map(DeterminationSummary::expandedUncertaintyPercent).orElse(OptionalDouble.empty()));
        stopReport.json(json, stop(one));
        Reply.problems(json, "doubts", summary.map(DeterminationSummary::doubts).orElse(List.of()), problemText);
    }

    private Optional<StopRule> stop(JudgedDetermination one) {
        return Optional.ofNullable(stops.get(one.determination().value().id()));
    }

    private static boolean isSimulated(JudgedDetermination one) {
        return one.trials().stream().anyMatch(trial -> trial.trial().value().simulated());
    }

    @Override
    public void text(TextPage page) {
        determinations.forEach(one -> {
            page.gap();
            if (isSimulated(one)) {
                page.line(words.get("simulate.mark"));
            }
            page.line(words.get(
                    "factor.title",
                    one.determination().value().id().text(),
                    one.determination().value().mixId().text()));
            trials(page, one);
            one.summary().ifPresent(summary -> {
                page.gap();
                summary(page, one, summary);
                stop(one).ifPresent(stop -> stopReport.text(page, stop));
            });
        });
    }

    private ReportLayout<JudgedTrial> trialLayout() {
        return new ReportLayout<JudgedTrial>(words, shown)
                .text(
                        "trialId",
                        "factor.trial",
                        trial -> trial.trial().value().id().text())
                .cell(
                        "factor.tested",
                        trial -> Dates.minute(trial.trial().value().testedAt()))
                .field((json, trial) -> json.number("factorPercent", trial.factorPercent()))
                .cell("factor.factor", trial -> shown.fixed(trial.factorPercent(), 3))
                .field((json, trial) -> json.flag("accepted", trial.counts()))
                .cell(
                        "factor.state",
                        trial -> words.get(
                                trial.isStruck() ? "factor.struck" : trial.isVoid() ? "factor.void" : "factor.counts"))
                .field((json, trial) ->
                        json.text("struckBecause", trial.trial().value().struckBecause()))
                .field((json, trial) ->
                        Reply.problems(json, "doubts", trial.figures().problems(), problemText));
    }

    private void trials(TextPage page, JudgedDetermination one) {
        trialLayout().table(page, one.trials());
        for (JudgedTrial trial : one.trials()) {
            String id = trial.trial().value().id().text();
            trial.trial()
                    .value()
                    .struckBecause()
                    .ifPresent(reason -> page.line(words.get("factor.struck-because", id, reason)));
            for (Problem problem : trial.figures().problems()) {
                String key = problem.isError() ? "factor.void-because" : "factor.doubt";
                page.line(words.get(key, id, problemText.say(problem)));
            }
        }
    }

    private void summary(TextPage page, JudgedDetermination one, DeterminationSummary summary) {
        String unit = words.get("unit.air");
        page.row(
                words.get("factor.counted"),
                Integer.toString(one.counted()),
                words.get("factor.of", Integer.toString(one.trials().size())));
        page.row(words.get("factor.mean"), shown.fixed(summary.summary().mean(), 3), unit);
        page.row(
                words.get("factor.standard-deviation"),
                shown.fixed(summary.summary().standardDeviation(), 3),
                unit);
        page.row(words.get("factor.range"), shown.fixed(summary.summary().range(), 3), unit);
        summary.rangeCheck()
                .ifPresent(check -> page.row(words.get("factor.range-limit"), shown.fixed(check.limit(), 3), unit));
        summary.interval().ifPresent(interval -> {
            page.row(words.get("factor.confidence-low"), shown.fixed(interval.low(), 3), unit);
            page.row(words.get("factor.confidence-high"), shown.fixed(interval.high(), 3), unit);
        });
        page.row(words.get("factor.uncertainty"), shown.fixed(summary.expandedUncertaintyPercent(), 3), unit);
        page.row(words.get("factor.reported"), shown.exact(summary.reportedPercent()), unit);
        summary.doubts().forEach(doubt -> page.line(words.get("problem.warning", problemText.say(doubt))));
    }
}
