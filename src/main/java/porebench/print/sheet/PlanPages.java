package porebench.print.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import porebench.evidence.paper.PlanSheet;
import porebench.evidence.plan.LoadsAtRisk;
import porebench.evidence.plan.PlannedTest;
import porebench.evidence.plan.WeekPlan;
import porebench.print.page.Align;
import porebench.print.page.Flow;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedSheet;
import porebench.print.page.Words;

/** Draws the tests of a week: a row a mix by day with room for who and when, then what to fetch of each source. */
public final class PlanPages extends PrintedSheet {
    private final PlanSheet sheet;
    private final WeekPlan plan;
    private final Imprint imprint;

    public PlanPages(PlanSheet sheet, OpenPages leaves, Words words, Imprint imprint) throws IOException {
        super(
                new Flow(
                        leaves,
                        words,
                        words.say(
                                "plan.running-head",
                                words.date(sheet.plan().from()),
                                words.date(sheet.plan().until())),
                        sheet.isTraining()),
                words);
        this.sheet = sheet;
        this.plan = sheet.plan();
        this.imprint = imprint;
    }

    public void draw() throws IOException {
        head(
                sheet.laboratory(),
                words.say("plan.kind"),
                words.say("plan.subject", words.date(plan.from()), words.date(plan.until())));
        small(sheet.arranged()
                .map(by -> words.say("plan.arranged", by.by(), Integer.toString(by.version())))
                .orElseGet(() -> words.say("plan.proposed")));
        flow.down(4);
        drawTests();
        drawFetches();
        cautions(List.of("caution.dust", "caution.lift", "caution.local-rules"));
        flow.finish(imprint);
    }

    private void drawTests() throws IOException {
        if (plan.tests().isEmpty()) {
            small(words.say("plan.none"));
            return;
        }
        PageTable table = table(
                16,
                column("plan.day", 1.4, Align.LEFT),
                column("plan.mix", 1.3, Align.LEFT),
                column("plan.title", 2.6, Align.LEFT),
                column("plan.need", 2.6, Align.LEFT),
                column("plan.trials", 0.8, Align.RIGHT),
                column("plan.meter", 1, Align.LEFT),
                column("plan.who", 1.6, Align.LEFT),
                column("plan.done", 1.3, Align.LEFT));
        for (int at = 0; at < plan.tests().size(); at++) {
            PlannedTest test = plan.tests().get(at);
            table.row(
                    List.of(
                            words.date(test.place().day()),
                            test.mixId().text(),
                            test.title(),
                            sheet.said().get(at).need(),
                            Integer.toString(test.trials()),
                            test.meter().map(meter -> meter.text()).orElse(""),
                            test.place().who(),
                            ""),
                    notes(test, sheet.said().get(at)));
        }
        for (PlannedTest out : plan.leftOut()) {
            flow.down(2);
            small(words.say("plan.left-out", out.mixId().text(), out.place().remark()));
        }
        if (plan.left() > 0) {
            flow.down(2);
            small(words.say("plan.left", Integer.toString(plan.left())));
        }
    }

    private List<String> notes(PlannedTest test, PlanSheet.Said said) {
        List<String> notes = new ArrayList<>();
        if (test.place().placing() == PlannedTest.Placing.NEW) {
            notes.add(words.say("plan.new"));
        }
        if (!test.place().remark().isBlank()) {
            notes.add(test.place().remark());
        }
        test.uncoveredSince().ifPresent(day -> notes.add(words.say("plan.since", words.date(day))));
        if (test.cardsOut() > 0) {
            notes.add(words.say("plan.cards", Integer.toString(test.cardsOut())));
        }
        test.determination().ifPresent(open -> notes.add(words.say("plan.goes-on", open.text())));
        if (test.risk().cause() != LoadsAtRisk.Cause.NO_LOADS) {
            notes.add(said.risk());
        }
        notes.addAll(said.doubts());
        return notes;
    }

    private void drawFetches() throws IOException {
        if (plan.fetches().isEmpty()) {
            return;
        }
        section("plan.fetches", 40);
        PageTable table = table(
                16,
                column("plan.source", 1.4, Align.LEFT),
                column("plan.name", 3, Align.LEFT),
                column("plan.tests", 0.8, Align.RIGHT),
                column("plan.fetch", 1.2, Align.RIGHT, sheet.massUnit().symbol()),
                column("plan.moisture", 1.4, Align.LEFT),
                column("plan.fetched", 1.8, Align.LEFT));
        for (WeekPlan.Fetch fetch : plan.fetches()) {
            table.row(List.of(
                    fetch.source(),
                    fetch.name(),
                    Integer.toString(fetch.tests()),
                    words.number(fetch.upwards(sheet.massUnit())),
                    "",
                    ""));
        }
        flow.down(2);
        small(words.say("plan.fetch-note"));
        flow.down(4);
    }
}
