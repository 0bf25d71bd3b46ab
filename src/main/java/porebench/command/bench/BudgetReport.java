package porebench.command.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.method.budget.Budget;
import porebench.method.budget.BudgetLine;
import porebench.method.budget.BudgetResult;
import porebench.method.budget.Capability;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.statistics.uncertainty.MonteCarlo;

/** What {@code budget} has to say. */
final class BudgetReport implements Report {
    private static final int DECIMALS = 4;
    private static final double LEAST_SAID = 0.00005;

    private final MixId mixId;
    private final List<OfDetermination> parts;
    private final Texts words;
    private final NumberText shown;

    /**
     * The budget of one determination.
     *
     * @param id the determination
     * @param factor its factor
     * @param capability what the uncertainty of the factor is worth
     * @param field a field reading corrected by it; empty when none was asked for
     */
    record OfDetermination(
            DeterminationId id, BudgetResult factor, Capability capability, Optional<BudgetResult> field) {}

    /** Reports the budgets of the determinations of a mix, at least one, the newest last. */
    BudgetReport(MixId mixId, List<OfDetermination> parts, Texts words, NumberText shown) {
        this.mixId = mixId;
        this.parts = List.copyOf(parts);
        this.words = words;
        this.shown = shown;
    }

    @Override
    public void json(JsonFields json) {
        json.text("mixId", mixId.text());
        OfDetermination newest = parts.get(parts.size() - 1);
        part(json, newest);
        json.group("field", newest.field(), (fields, one) -> {
            fields.number("airPercent", one.budget().valuePercent());
            budget(fields, one);
        });
        json.list("determinations", parts, this::part);
    }

    private void part(JsonFields json, OfDetermination one) {
        json.text("determinationId", one.id().text());
        json.number("factorPercent", one.factor().budget().valuePercent());
        budget(json, one.factor());
        json.group("capability", fields -> {
            fields.number("index", one.capability().index());
            fields.number("reportingSteps", one.capability().steps());
            fields.number("tolerancePercent", one.capability().tolerancePercent());
            fields.text("standing", one.capability().standing().symbol());
        });
    }

    private void budget(JsonFields json, BudgetResult one) {
        Budget budget = one.budget();
        json.list("contributions", budget.lines(), contributions(budget)::json);
        json.number("combined", budget.combinedPercent());
        json.number("effectiveDegreesOfFreedom", budget.effectiveDegreesOfFreedom());
        json.number("expanded", budget.expandedPercent());
        json.number("combinedIfIndependent", budget.apartPercent());
        json.group("result", fields -> {
            fields.text("method", one.isDrawn() ? "monte-carlo" : "propagation");
            fields.number("uncertainty", one.uncertaintyPercent());
            fields.number("low", one.lowPercent());
            fields.number("high", one.highPercent());
        });
        json.group("monteCarlo", fields -> {
            fields.number("low", one.drawn().symmetric().low());
            fields.number("high", one.drawn().symmetric().high());
            fields.number("shortestLow", one.drawn().shortest().low());
            fields.number("shortestHigh", one.drawn().shortest().high());
            fields.number("median", one.drawn().median());
            fields.number("mean", one.drawn().mean());
            fields.number("standardDeviation", one.drawn().standardDeviation());
            fields.whole("draws", one.drawn().draws());
            fields.whole("seed", one.drawn().seed());
            fields.number("tolerance", one.check().tolerance());
            fields.flag("agrees", one.check().agrees());
            fields.group("settling", one.drawn().settling(), (settling, reached) -> {
                settling.number("tolerance", reached.tolerance());
                settling.number("reached", reached.reached());
                settling.flag("settled", reached.isSettled());
            });
        });
    }

    @Override
    public void text(TextPage page) {
        for (OfDetermination part : parts) {
            page.line(words.get("budget.determination", part.id().text()));
            text(page, "budget.title", "budget.verdict", part.factor());
            Capability capability = part.capability();
            page.line(words.get(
                    "capability." + capability.standing().symbol(),
                    shown.fixed(capability.index(), 1),
                    shown.fixed(capability.tolerancePercent(), 1),
                    shown.fixed(capability.steps(), 1),
                    shown.fixed(capability.stepPercent(), 2)));
            part.field().ifPresent(one -> {
                page.gap();
                text(page, "budget.field-title", "budget.field-verdict", one);
            });
        }
    }

    private void text(TextPage page, String title, String verdict, BudgetResult one) {
        Budget budget = one.budget();
        BudgetLine largest = budget.largestFirst().get(0);
        page.line(words.get(title, mixId.text()));
        page.line(words.get(
                verdict,
                shown.fixed(budget.valuePercent(), 3),
                shown.fixed(one.uncertaintyPercent(), 3),
                words.get("part." + largest.part().symbol()),
                Digits.share(budget.shareOf(largest)),
                words.get(one.isDrawn() ? "budget.by-drawing" : "budget.by-propagation")));
        page.gap();
        contributions(budget).table(page, budget.lines());
        page.gap();
        totals(page, one);
    }

    private void totals(TextPage page, BudgetResult one) {
        Budget budget = one.budget();
        String unit = words.get("unit.air");
        page.row(words.get("budget.result"), shown.fixed(one.uncertaintyPercent(), DECIMALS), unit);
        page.row(words.get("budget.combined"), shown.fixed(budget.combinedPercent(), DECIMALS), unit);
        page.row(words.get("budget.effective"), degrees(budget.effectiveDegreesOfFreedom()), "");
        page.row(words.get("budget.expanded"), shown.fixed(budget.expandedPercent(), DECIMALS), unit);
        MonteCarlo drawn = one.drawn();
        page.row(words.get("budget.drawn-low"), shown.fixed(drawn.symmetric().low(), DECIMALS), unit);
        page.row(words.get("budget.drawn-high"), shown.fixed(drawn.symmetric().high(), DECIMALS), unit);
        page.line(words.get("budget.drawn", Integer.toString(drawn.draws()), Long.toString(drawn.seed())));
        drawn.settling()
                .filter(settling -> !settling.isSettled())
                .ifPresent(settling ->
                        page.line(words.get("budget.unsettled", shown.fixed(settling.reached(), DECIMALS))));
        if (drawn.standardDeviation().isEmpty()) {
            page.line(words.get("budget.no-deviation"));
        }
        page.line(words.get(
                one.check().agrees()
                        ? "budget.agrees"
                        : one.check().isDrawnWider() ? "budget.drawn-wider" : "budget.drawn-narrower",
                shown.sixDigits(one.check().tolerance()),
                shown.fixed(one.check().largestDifference(), DECIMALS)));
        double together = budget.combinedPercent() - budget.apartPercent();
        if (Math.abs(together) >= LEAST_SAID) {
            page.line(words.get(
                    together < 0 ? "budget.together-less" : "budget.together-more",
                    shown.fixed(Math.abs(together), DECIMALS)));
        }
    }

    private ReportLayout<BudgetLine> contributions(Budget budget) {
        DoubleFunction<String> fine = number -> shown.fixed(number, DECIMALS);
        return new ReportLayout<BudgetLine>(words, shown)
                .field((json, line) -> json.text("name", line.part().symbol()))
                .cell("budget.part", line -> words.get("part." + line.part().symbol()))
                .number("value", "budget.value", BudgetLine::value, number -> shown.fixed(number, 3))
                .field((json, line) -> json.text("unit", line.part().unit()))
                .cell("budget.unit", line -> unit(line.part()))
                .number("standardUncertainty", "budget.u", BudgetLine::standardUncertainty, fine)
                .number("sensitivity", "budget.sensitivity", BudgetLine::sensitivity, fine)
                .number("contributionPercent", "budget.contribution", BudgetLine::sizePercent, fine)
                .number("share", "budget.share", budget::shareOf, Digits::share)
                .field((json, line) -> json.number("degreesOfFreedom", line.degreesOfFreedom()))
                .cell("budget.degrees", line -> degrees(line.degreesOfFreedom()))
                .field((json, line) -> json.text("origin", line.origin().symbol()))
                .cell(
                        "budget.origin",
                        line -> words.get("origin." + line.origin().symbol()));
    }

    private String unit(porebench.method.budget.BudgetPart part) {
        return switch (part.unit()) {
            case "% air" -> words.get("unit.air");
            case "% bowl" -> words.get("unit.bowl");
            default -> part.unit();
        };
    }

    private String degrees(double degrees) {
        return Double.isInfinite(degrees) ? words.get("budget.infinite") : shown.fixed(degrees, 1);
    }
}
