package porebench.command.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.evidence.change.Comparison;
import porebench.evidence.change.ComparisonText;
import porebench.evidence.change.SourceChange;
import porebench.method.Texts;
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
    static Report of(SourceChange change, Texts words, NumberText shown) {
        return in(words, shown)
                .of(SourceChange::comparison)
                .field((json, one) -> json.texts("sources", texts(one.sources(), SourceId::text)))
                .field((json, one) -> json.texts("beforeDeterminations", texts(one.before(), DeterminationId::text)))
                .field((json, one) -> json.texts("afterDeterminations", texts(one.after(), DeterminationId::text)))
                .gap()
                .cell("compare.sources", one -> joined(one.sources(), SourceId::text))
                .cell("compare.before-determinations", one -> joined(one.before(), DeterminationId::text))
                .cell("compare.after-determinations", one -> joined(one.after(), DeterminationId::text))
                .report(change);
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
