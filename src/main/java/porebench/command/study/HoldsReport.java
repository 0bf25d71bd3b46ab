package porebench.command.study;

import java.util.OptionalDouble;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.evidence.hold.HoldText;
import porebench.method.Texts;
import porebench.method.hold.Hold;
import porebench.method.hold.HoldPoint;
import porebench.method.hold.HoldShift;

/** What {@code holds} has to say. */
final class HoldsReport {
    private static final int DECIMALS = 2;

    private HoldsReport() {}

    static Report of(Hold hold, HoldText text, Texts words, NumberText shown) {
        return layout(text, words, shown)
                .list("points", Hold::points, points(words, shown))
                .report(hold);
    }

    /** Returns what is said of a chart above its points. */
    static ReportLayout<Hold> layout(HoldText text, Texts words, NumberText shown) {
        return new ReportLayout<Hold>(words, shown)
                .text("verdict", told -> told.verdict().symbol())
                .alone((page, told) -> {
                    page.line(text.say(told));
                    text.reasons(told).forEach(page::line);
                })
                .field((json, told) -> json.group("shift", told.shift(), HoldsReport::shift))
                .field((json, told) -> json.number("spreadPercent", told.spread()))
                .number("sumLimit", told -> Hold.INTERVAL)
                .number("averageLimit", told -> Hold.AVERAGE_LIMIT)
                .number("runLength", told -> Hold.runLength())
                .field((json, told) -> json.number("pairsForHalfStep", told.pairsForHalfStep()))
                .field((json, told) -> json.number("tellablePercent", told.tellable()))
                .field((json, told) -> json.texts(
                        "signals",
                        told.signals().stream()
                                .map(point -> point.pair().name())
                                .toList()))
                .gap();
    }

    private static void shift(JsonFields json, HoldShift shift) {
        json.number("percent", shift.percent());
        json.number("low", shift.low());
        json.number("high", shift.high());
    }

    static ReportLayout<HoldPoint> points(Texts words, NumberText shown) {
        return new ReportLayout<HoldPoint>(words, shown)
                .text("readingId", "holds.reading", point -> point.pair().name())
                .number(
                        "gravimetricPercent",
                        "holds.by-density",
                        point -> point.pair().gravimetricPercent(),
                        shown.fixed(DECIMALS))
                .number(
                        "differencePercent",
                        "holds.difference",
                        point -> point.pair().difference(),
                        shown.fixed(DECIMALS))
                .field((json, point) -> json.number("score", point.score()))
                .cell("holds.score", point -> score(point.score(), shown))
                .number("highSum", "holds.high", HoldPoint::high, shown.fixed(DECIMALS))
                .number("lowSum", "holds.low", HoldPoint::low, shown.fixed(DECIMALS))
                .number("average", "holds.average", HoldPoint::average, shown.fixed(DECIMALS))
                .flag("doubted", point -> point.pair().isDoubted())
                .flag("farOut", HoldPoint::isFarOut)
                .flag("signal", HoldPoint::isSignal)
                .flag("averageBeyond", HoldPoint::isAverageBeyond)
                .cell("holds.signal", point -> mark(point, words));
    }

    private static String score(OptionalDouble score, NumberText shown) {
        return shown.fixed(score, DECIMALS);
    }

    private static String mark(HoldPoint point, Texts words) {
        if (point.pair().isDoubted()) {
            return words.get("holds.doubted");
        }
        if (point.isSignal()) {
            return words.get("holds.signals");
        }
        if (point.isAverageBeyond()) {
            return words.get("holds.average-beyond");
        }
        return point.isFarOut() ? words.get("holds.far-out") : "";
    }
}
