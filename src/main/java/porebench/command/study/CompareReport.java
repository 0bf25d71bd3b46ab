package porebench.command.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Reply;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.evidence.change.Comparison;
import porebench.evidence.change.ComparisonText;
import porebench.evidence.change.SourceChange;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.record.ChangeDecision;
import porebench.record.id.DeterminationId;
import porebench.record.id.SourceId;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.ComparisonPlan;
import porebench.statistics.comparison.ComparisonPlan.More;
import porebench.statistics.comparison.Equivalence;
import porebench.statistics.comparison.ReadingSets;

/** What {@code compare} has to say. */
final class CompareReport {
    private CompareReport() {}

    /** Lays out a comparison of two files. */
    static Report of(Comparison comparison, Texts words, NumberText shown) {
        return in(words, shown).report(comparison);
    }

    /** Lays out what the trials of a mix say, with what they are. */
    static Report of(DecidedComparison told, Texts words, NumberText shown, ProblemText problems) {
        ReportLayout<DecidedComparison.Told> decisions = decisions(words, shown, problems);
        return changed(words, shown)
                .of(DecidedComparison::change)
                .field((json, one) -> json.text("decisionId", one.made().map(ChangeDecision::recordId)))
                .field((json, one) -> json.list("decisions", one.all(), decisions::json))
                .alone((page, one) -> {
                    if (!one.all().isEmpty()) {
                        page.gap();
                        decisions.table(page, one.all());
                    }
                })
                .report(told);
    }

    private static ReportLayout<DecidedComparison.Told> decisions(Texts words, NumberText shown, ProblemText problems) {
        return new ReportLayout<DecidedComparison.Told>(words, shown)
                .text("decisionId", "compare.decision", told -> told.decision().recordId())
                .text("decision", told -> told.decision().choice().symbol())
                .cell("compare.choice", told -> choice(told.decision(), words))
                .field((json, told) -> json.whole("moreTrials", told.decision().more()))
                .text("verdict", told -> told.decision().figures().verdict().symbol())
                .flag("againstVerdict", told -> told.decision().isAgainstVerdict())
                .text(
                        "decidedOn",
                        "compare.decided-on",
                        told -> told.decision().decidedOn().toString())
                .text("decidedBy", "compare.decided-by", told -> told.decision().decidedBy())
                .text("reason", "compare.reason", told -> told.decision().reason())
                .field((json, told) ->
                        json.whole("revision", told.decision().change().revision()))
                .field((json, told) ->
                        json.number("difference", told.decision().figures().difference()))
                .text("origin", told -> told.decision().origin().symbol())
                .field((json, told) -> Reply.problems(json, "changedSince", told.since(), problems))
                .cell(
                        "compare.since",
                        told -> told.since().stream().map(problems::say).collect(Collectors.joining(" ")));
    }

    private static String choice(ChangeDecision decision, Texts words) {
        return switch (decision.choice()) {
            case KEEP -> words.get("compare.decided-keep");
            case REPLACE -> words.get("compare.decided-replace");
            case TEST_MORE ->
                words.get("compare.decided-test-more", decision.more().orElse(0));
        };
    }

    private static ReportLayout<SourceChange> changed(Texts words, NumberText shown) {
        return in(words, shown)
                .of(SourceChange::comparison)
                .field((json, one) -> json.texts("sources", texts(one.sources(), SourceId::text)))
                .field((json, one) -> json.texts("beforeDeterminations", texts(one.before(), DeterminationId::text)))
                .field((json, one) -> json.texts("afterDeterminations", texts(one.after(), DeterminationId::text)))
                .gap()
                .cell("compare.sources", one -> joined(one.sources(), SourceId::text))
                .cell("compare.before-determinations", one -> joined(one.before(), DeterminationId::text))
                .cell("compare.after-determinations", one -> joined(one.after(), DeterminationId::text));
    }

    private static <T> List<String> texts(List<T> ids, Function<T, String> text) {
        return ids.stream().map(text).toList();
    }

    private static <T> String joined(List<T> ids, Function<T, String> text) {
        return ids.stream().map(text).collect(Collectors.joining(", "));
    }

    private static ReportLayout<Comparison> in(Texts words, NumberText shown) {
        ComparisonText text = ComparisonText.in(words.locale());
        return new ReportLayout<Comparison>(words, shown)
                .line(text::say)
                .alone((page, one) -> text.reasons(one).forEach(page::line))
                .gap()
                .number("compare.before", one -> one.found().before().mean(), shown::sixDigits)
                .number("compare.before-count", one -> one.found().before().readings(), shown.fixed(0))
                .number("compare.after", one -> one.found().after().mean(), shown::sixDigits)
                .number("compare.after-count", one -> one.found().after().readings(), shown.fixed(0))
                .number("difference", "compare.difference", one -> one.found().difference())
                .field(CompareReport::interval)
                .number("standardError", "compare.error", one -> one.found().standardError())
                .number("compare.t", one -> one.found().t(), shown::sixDigits)
                .number("compare.degrees", one -> one.found().degreesOfFreedom(), shown::sixDigits)
                .number("compare.p", one -> one.found().p(), shown::probability)
                .field(CompareReport::welch)
                .number("compare.p-low", one -> one.equivalence().pLow(), shown::probability)
                .number("compare.p-high", one -> one.equivalence().pHigh(), shown::probability)
                .field(CompareReport::equivalence)
                .number("power", one -> one.plan().power())
                .field((json, one) -> json.number("powerTarget", ComparisonPlan.TARGET))
                .field((json, one) -> more(json, "trialsNeeded", one.plan().onEachSide()))
                .field((json, one) -> more(json, "trialsNeededAfter", one.plan().after()))
                .text("verdict", one -> one.verdict().symbol())
                .text("unit", one -> one.found().unit().symbol())
                .field((json, one) ->
                        json.group("before", fields -> side(fields, one.found().before())))
                .field((json, one) ->
                        json.group("after", fields -> side(fields, one.found().after())))
                .number("division", "compare.division", Comparison::divisionPercent)
                .flag("roundingCounts", one -> one.found().isOfDivision());
    }

    private static void interval(JsonFields json, Comparison one) {
        BeforeAndAfter found = one.found();
        json.group("confidence95", fields -> {
            fields.number("low", found.difference() - found.halfWidth());
            fields.number("high", found.difference() + found.halfWidth());
        });
    }

    private static void welch(JsonFields json, Comparison one) {
        json.group("welch", fields -> {
            fields.number("t", one.found().t());
            fields.number("degreesOfFreedom", one.found().degreesOfFreedom());
            fields.number("p", one.found().p());
        });
    }

    private static void equivalence(JsonFields json, Comparison one) {
        Equivalence tests = one.equivalence();
        json.group("equivalence", fields -> {
            fields.number("margin", tests.margin());
            fields.group("confidence90", ends -> {
                ends.number("low", tests.low());
                ends.number("high", tests.high());
            });
            fields.number("pLow", tests.pLow());
            fields.number("pHigh", tests.pHigh());
            fields.flag("equivalent", tests.isEquivalent());
        });
    }

    private static void more(JsonFields json, String name, Optional<More> more) {
        json.whole(name, more.map(More::readings));
    }

    private static void side(JsonFields json, ReadingSets side) {
        json.whole("count", side.readings());
        json.whole("determinations", side.sets());
        json.number("mean", side.mean());
    }
}
