package porebench.command.book;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import porebench.command.reply.NumberText;
import porebench.command.reply.Reply;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.evidence.plan.LoadsAtRisk;
import porebench.evidence.plan.PlanText;
import porebench.evidence.plan.PlannedTest;
import porebench.evidence.plan.WeekPlan;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.sample.WeighOut;
import porebench.quantity.MassUnit;
import porebench.record.TestPlan;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;

/** What {@code plan} says. */
final class PlanReport {
    private final Texts words;
    private final NumberText shown;
    private final ProblemText problemText;
    private final PlanText text;
    private final MassUnit unit;
    private final BigDecimal spare;

    /**
     * Makes it.
     *
     * @param unit the unit in which people read masses; programs read kg
     * @param spare what is fetched beyond the trials, in %
     */
    PlanReport(Texts words, NumberText shown, ProblemText problemText, Locale locale, MassUnit unit, BigDecimal spare) {
        this.words = words;
        this.shown = shown;
        this.problemText = problemText;
        this.text = PlanText.in(locale);
        this.unit = unit;
        this.spare = spare;
    }

    private <T> ReportLayout<T> laidOut() {
        return new ReportLayout<>(words, shown);
    }

    /**
     * Says a plan.
     *
     * @param kept the plan that is kept; empty where it is proposed
     */
    Report said(WeekPlan plan, Optional<Version<TestPlan>> kept) {
        ReportLayout<PlannedTest> tests = tests();
        ReportLayout<WeekPlan.Fetch> fetches = fetches();
        return this.<WeekPlan>laidOut()
                .text("from", said -> said.from().toString())
                .text("until", said -> said.until().toString())
                .field((json, said) -> json.group("arranged", kept, (group, version) -> {
                    group.text("by", version.stamp().who());
                    group.whole("version", version.number());
                }))
                .line(said -> words.get(
                        "plan.title", said.from().toString(), said.until().toString()))
                .line(said -> kept.map(version ->
                                words.get("plan.arranged", version.stamp().who(), Integer.toString(version.number())))
                        .orElseGet(() -> words.get("plan.proposed")))
                .field((json, said) -> json.list("tests", said.tests(), tests::json))
                .field((json, said) -> json.list("leftOut", said.leftOut(), tests::json))
                .alone((page, said) -> {
                    page.gap();
                    if (said.tests().isEmpty()) {
                        page.line(words.get("plan.none"));
                    } else {
                        tests.table(page, said.tests());
                    }
                    said.leftOut()
                            .forEach(test -> page.line(words.get(
                                    "plan.left-out",
                                    test.mixId().text(),
                                    text.say(test.need()),
                                    test.place().remark())));
                    said.tests().forEach(test -> {
                        if (test.risk().cause() != LoadsAtRisk.Cause.NO_LOADS) {
                            page.line(words.get("plan.risk-line", test.mixId().text(), text.say(test.risk())));
                        }
                        test.due()
                                .forEach(why -> page.line(words.get(
                                        "register.missing-line", test.mixId().text(), problemText.say(why))));
                        test.doubts().forEach(doubt -> page.line(problemText.say(doubt)));
                    });
                    if (said.left() > 0) {
                        page.line(words.get("plan.left", Integer.toString(said.left())));
                    }
                })
                .whole("left", WeekPlan::left)
                .field((json, said) -> json.list("sources", said.fetches(), fetches::json))
                .alone((page, said) -> {
                    if (!said.fetches().isEmpty()) {
                        page.gap();
                        page.line(words.get("plan.fetches", shown.exact(spare)));
                        fetches.table(page, said.fetches());
                    }
                })
                .report(plan);
    }

    private ReportLayout<PlannedTest> tests() {
        ReportLayout<WeighOut.Line> lines = this.<WeighOut.Line>laidOut()
                .text("source", WeighOut.Line::source)
                .text("name", WeighOut.Line::name)
                .text("role", line -> line.role().symbol())
                .field((json, line) -> json.number("kilogramsEach", line.each().kilograms()))
                .field((json, line) ->
                        json.number("kilogramsToFetch", line.total().kilograms()));
        return this.<PlannedTest>laidOut()
                .text("day", "plan.day", test -> test.place().day().toString())
                .text("mixId", "register.mix", test -> test.mixId().text())
                .text("need", test -> test.need().symbol())
                .cell("plan.need", test -> text.say(test.need()))
                .text("placing", test -> test.place().placing().symbol())
                .cell("plan.placing", test -> text.say(test.place().placing()))
                .field((json, test) -> json.text("title", test.title()))
                .field((json, test) -> json.text("plant", test.plant()))
                .text("state", test -> test.state().symbol())
                .field((json, test) -> json.date("withoutFactorSince", test.uncoveredSince()))
                .cell("register.without-since", test -> or(test.uncoveredSince()))
                .field((json, test) -> json.date("recheckBy", test.recheckBy()))
                .cell("register.recheck-by", test -> or(test.recheckBy()))
                .whole("cardsOut", "plan.cards-out", PlannedTest::cardsOut)
                .field((json, test) -> json.group("risk", risk -> {
                    risk.number("loadsAWeek", test.risk().loadsAWeek());
                    risk.text("cause", test.risk().cause().symbol());
                    risk.number("errorPercent", test.risk().errorPercent());
                    risk.whole("mixes", test.risk().mixes());
                    risk.number("wrongShare", test.risk().share());
                    risk.number("wrongAWeek", test.risk().wrongAWeek());
                }))
                .cell("plan.risk", test -> text.brief(test.risk()))
                .field((json, test) ->
                        json.text("determinationId", test.determination().map(DeterminationId::text)))
                .whole("trials", "register.trials", PlannedTest::trials)
                .field((json, test) -> json.text("meterId", test.meter().map(MeterId::text)))
                .cell("plan.meter", test -> test.meter().map(MeterId::text).orElse(NumberText.NONE))
                .text("who", test -> test.place().who())
                .cell(
                        "plan.who",
                        test -> test.place().who().isBlank()
                                ? NumberText.NONE
                                : test.place().who())
                .text("remark", test -> test.place().remark())
                .field((json, test) -> json.list(
                        "components", test.weighOut().map(WeighOut::lines).orElse(List.of()), lines::json))
                .field((json, test) -> Reply.problems(json, "due", test.due(), problemText))
                .field((json, test) -> Reply.problems(json, "doubts", test.doubts(), problemText))
                .cell("register.mix-title", PlannedTest::title);
    }

    private ReportLayout<WeekPlan.Fetch> fetches() {
        return this.<WeekPlan.Fetch>laidOut()
                .text("source", "plan.source", WeekPlan.Fetch::source)
                .text("name", "plan.name", WeekPlan.Fetch::name)
                .text("role", fetch -> fetch.role().symbol())
                .field((json, fetch) -> json.number("kilograms", fetch.total().kilograms()))
                .cell("plan.fetch", fetch -> shown.exact(fetch.upwards(unit)), unit.symbol())
                .whole("tests", "plan.tests", WeekPlan.Fetch::tests);
    }

    private static String or(Optional<?> value) {
        return value.map(Object::toString).orElse(NumberText.NONE);
    }
}
