package porebench.print.sheet;

import java.io.IOException;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import porebench.evidence.paper.PlanSheet;
import porebench.evidence.plan.PlannedTest;
import porebench.evidence.plan.WeekPlan;
import porebench.method.RoundingRule;
import porebench.print.page.Align;
import porebench.print.page.Flow;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedSheet;
import porebench.print.page.Words;

/** Draws the tests of a week: a row a mix with room for who and when, then what to fetch of each source. */
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
                column("plan.mix", 1.4, Align.LEFT),
                column("plan.title", 3, Align.LEFT),
                column("plan.need", 3, Align.LEFT),
                column("plan.trials", 0.8, Align.RIGHT),
                column("plan.meter", 1, Align.LEFT),
                column("plan.who", 1.6, Align.LEFT),
                column("plan.done", 1.4, Align.LEFT));
        for (int at = 0; at < plan.tests().size(); at++) {
            PlannedTest test = plan.tests().get(at);
            table.row(
                    List.of(
                            test.mixId().text(),
                            test.title(),
                            need(test),
                            Integer.toString(test.trials()),
                            test.meter().map(meter -> meter.text()).orElse(""),
                            "",
                            ""),
                    notes(test, sheet.doubts().get(at)));
        }
        if (plan.left() > 0) {
            flow.down(2);
            small(words.say("plan.left", Integer.toString(plan.left())));
        }
    }

    private String need(PlannedTest test) {
        return words.say("plan.need." + test.need().symbol());
    }

    private List<String> notes(PlannedTest test, List<String> doubts) {
        List<String> notes = new ArrayList<>();
        test.uncoveredSince().ifPresent(day -> notes.add(words.say("plan.since", words.date(day))));
        if (test.cardsOut() > 0) {
            notes.add(words.say("plan.cards", Integer.toString(test.cardsOut())));
        }
        test.determination().ifPresent(open -> notes.add(words.say("plan.goes-on", open.text())));
        notes.addAll(doubts);
        return notes;
    }

    /** Returns the mass to fetch, in tenths of the unit and never less than it is: common practice, no source. */
    private String upwards(WeekPlan.Fetch fetch) {
        return words.number(
                RoundingRule.withoutNoise(fetch.total().in(sheet.massUnit())).setScale(1, RoundingMode.CEILING));
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
            table.row(List.of(fetch.source(), fetch.name(), Integer.toString(fetch.tests()), upwards(fetch), "", ""));
        }
        flow.down(2);
        small(words.say("plan.fetch-note"));
        flow.down(4);
    }
}
