package porebench.command.book;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Reply;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.evidence.field.FieldAir;
import porebench.evidence.field.FieldFinding;
import porebench.evidence.field.FieldOutcome;
import porebench.evidence.paper.SievedAirs;
import porebench.method.Dates;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.air.AirVerdict;

/** What {@code readings} has to say. */
final class ReadingsReport {
    private static final int DECIMALS = 2;

    private final Texts words;
    private final NumberText shown;
    private final ProblemText problems;

    ReadingsReport(Texts words, NumberText shown, ProblemText problems) {
        this.words = words;
        this.shown = shown;
        this.problems = problems;
    }

    /**
     * Lays out readings with what was made of them.
     *
     * @param guard how many standard uncertainties wide the guard band is; empty for none
     */
    Report of(List<FieldOutcome> outcomes, Optional<BigDecimal> guard) {
        boolean isSieved = outcomes.stream()
                .flatMap(outcome -> outcome.air().stream())
                .anyMatch(air -> air.spread().isPresent());
        return new ReportLayout<List<FieldOutcome>>(words, shown)
                .field((json, all) -> json.number("guard", guard))
                .whole("count", List::size)
                .whole("passed", all -> count(all, AirVerdict.PASSES))
                .whole("guarded", all -> count(all, AirVerdict.GUARDED))
                .whole("failed", all -> count(all, AirVerdict.FAILS))
                .whole("notCorrected", ReadingsReport::notCorrected)
                .line(all -> words.get(
                        "readings.summary",
                        all.size(),
                        count(all, AirVerdict.PASSES),
                        count(all, AirVerdict.GUARDED),
                        count(all, AirVerdict.FAILS),
                        notCorrected(all)))
                .gap()
                .list("readings", all -> all, reading(isSieved))
                .alone((page, all) -> {
                    page.gap();
                    if (isSieved) {
                        page.line(words.get("readings.sieved"));
                    }
                    all.stream()
                            .flatMap(outcome -> outcome.air().stream())
                            .map(FieldAir::issue)
                            .filter(issue -> !issue.terms().conditions().isBlank())
                            .distinct()
                            .map(issue -> words.get(
                                    "readings.conditions",
                                    issue.mixId().text(),
                                    Integer.toString(issue.revision()),
                                    issue.terms().conditions()))
                            .forEach(page::line);
                    all.stream()
                            .flatMap(outcome -> outcome.problems().stream())
                            .map(problems::say)
                            .forEach(page::line);
                })
                .report(outcomes);
    }

    private static long count(List<FieldOutcome> outcomes, AirVerdict verdict) {
        return outcomes.stream()
                .flatMap(outcome -> outcome.air().stream())
                .filter(air -> air.verdict().filter(verdict::equals).isPresent())
                .count();
    }

    private static long notCorrected(List<FieldOutcome> outcomes) {
        return outcomes.stream().filter(outcome -> outcome.air().isEmpty()).count();
    }

    /** Lays out a reading; full mixture and mortar have columns where some concrete is wet-sieved. */
    private ReportLayout<FieldOutcome> reading(boolean isSieved) {
        ReportLayout<FieldOutcome> layout = new ReportLayout<FieldOutcome>(words, shown)
                .text(
                        "readingId",
                        "readings.reading",
                        outcome -> outcome.reading().recordId())
                .text(
                        "mixId",
                        "readings.mix",
                        outcome -> outcome.reading().mixId().text())
                .text("readAt", outcome -> outcome.reading().readAt().toString())
                .cell(
                        "readings.read-at",
                        outcome -> Dates.minute(outcome.reading().readAt()))
                .text("truck", "readings.truck", outcome -> outcome.reading().truck())
                .exact(
                        "gaugePercent",
                        "readings.gauge",
                        outcome -> outcome.reading().gaugePercent())
                .text("state", outcome -> outcome.now().state().symbol())
                .field((json, outcome) -> found(json, outcome.now()))
                .cell("readings.factor", outcome -> now(outcome, this::factor))
                .cell("readings.air", outcome -> now(outcome, air -> shown.exact(air.reportedPercent())));
        if (isSieved) {
            layout.cell("readings.full-mixture", outcome -> spread(outcome, SievedAirs.Spread::fullMixturePercent))
                    .cell("readings.mortar", outcome -> spread(outcome, SievedAirs.Spread::mortarPercent));
        }
        return layout.cell(
                        "readings.uncertainty",
                        outcome -> now(outcome, air -> shown.fixed(air.expandedPercent(), DECIMALS)))
                .cell("readings.verdict", outcome -> now(outcome, this::verdict))
                .cell("readings.before", this::before)
                .field((json, outcome) -> json.group("said", outcome.said(), (fields, said) -> {
                    fields.text("at", said.at().toString());
                    fields.number("gaugePercent", said.reading().gaugePercent());
                    fields.text("state", said.finding().state().symbol());
                    found(fields, said.finding());
                }))
                .field((json, outcome) -> Reply.problems(json, "problems", outcome.problems(), problems));
    }

    /** Writes what was found; of a reading that is not corrected the numbers are null. */
    private static void found(JsonFields json, FieldFinding finding) {
        Optional<FieldAir> air = finding.air();
        json.whole("revision", air.map(one -> one.issue().revision()));
        json.number("factorPercent", air.map(one -> one.issue().factorPercent()));
        json.text("conditions", air.map(one -> one.issue().terms().conditions()).filter(said -> !said.isBlank()));
        json.number("airPercent", air.map(FieldAir::airPercent));
        json.number("reportedAirPercent", air.map(FieldAir::reportedPercent));
        json.number("fullMixturePercent", air.flatMap(FieldAir::spread).map(SievedAirs.Spread::fullMixturePercent));
        json.number("mortarPercent", air.flatMap(FieldAir::spread).map(SievedAirs.Spread::mortarPercent));
        json.number("standardUncertaintyPercent", number(air, FieldAir::standardPercent));
        json.number("expandedUncertaintyPercent", number(air, FieldAir::expandedPercent));
        json.number(
                "acceptedFromPercent",
                number(air, one -> OptionalDouble.of(one.limits().acceptedFromPercent())));
        json.number(
                "acceptedToPercent",
                number(air, one -> OptionalDouble.of(one.limits().acceptedToPercent())));
        json.number("conformingProbability", number(air, FieldAir::conforming));
        json.text("verdict", air.flatMap(FieldAir::verdict).map(AirVerdict::symbol));
    }

    private static OptionalDouble number(Optional<FieldAir> air, Function<FieldAir, OptionalDouble> of) {
        return air.map(of).orElse(OptionalDouble.empty());
    }

    private static String now(FieldOutcome outcome, Function<FieldAir, String> text) {
        return outcome.air().map(text).orElse(NumberText.NONE);
    }

    private String spread(FieldOutcome outcome, Function<SievedAirs.Spread, BigDecimal> of) {
        return outcome.air().flatMap(FieldAir::spread).map(of).map(shown::exact).orElse(NumberText.NONE);
    }

    private String factor(FieldAir air) {
        return words.get(
                "readings.factor-of",
                shown.exact(air.issue().factorPercent()),
                Integer.toString(air.issue().revision()));
    }

    private String verdict(FieldAir air) {
        return air.verdict()
                .map(verdict -> words.get("readings.is." + verdict.symbol()))
                .orElseGet(() -> words.get("readings.not-judged"));
    }

    /** Says what was said of a reading when it was first kept; nothing where that is the same as now. */
    String before(FieldOutcome outcome) {
        return outcome.said()
                .map(said -> said.finding()
                        .air()
                        .map(air -> words.get(
                                "readings.said", shown.exact(air.reportedPercent()), factor(air), verdict(air)))
                        .orElseGet(() -> words.get("readings.said-nothing")))
                .orElse("");
    }
}
