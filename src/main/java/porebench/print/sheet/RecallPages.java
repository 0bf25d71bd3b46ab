package porebench.print.sheet;

import java.io.IOException;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.paper.RecallList;
import porebench.print.page.Align;
import porebench.print.page.Flow;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedSheet;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.CardHolder;
import porebench.record.CardStep;

/** Draws factor cards by who holds them, with room to write what became of each. */
public final class RecallPages extends PrintedSheet {
    private static final double ROW = 20;
    private static final double HOLDER = 17;

    private final RecallList list;
    private final Imprint imprint;

    public RecallPages(RecallList list, OpenPages leaves, Words words, Imprint imprint) throws IOException {
        super(
                new Flow(leaves, words, words.say("recall.running-head", subject(list, words)), list.isTraining()),
                words);
        this.list = list;
        this.imprint = imprint;
    }

    private static String subject(RecallList list, Words words) {
        String when = moment(list.moment(), words);
        if (list.only().isPresent()) {
            String key = list.which() == RecallList.Which.OUT ? "recall.subject.carries" : "recall.subject.returns";
            return words.say(key, holder(list.only(), words), when);
        }
        return words.say(
                list.which() == RecallList.Which.OUT ? "recall.subject.out" : "recall.subject.to-come-back", when);
    }

    private static String moment(LocalDateTime moment, Words words) {
        return words.say(
                "register.at",
                words.date(moment.toLocalDate()),
                moment.toLocalTime().truncatedTo(ChronoUnit.MINUTES).toString());
    }

    private static String holder(Optional<CardHolder> holder, Words words) {
        return holder.map(known -> words.say("holder." + known.kind().symbol(), known.name()))
                .orElseGet(() -> words.say("holder.nobody"));
    }

    public void draw() throws IOException {
        head(list.laboratory(), words.say("recall.kind"), subject(list, words));
        small(
                list.which() == RecallList.Which.OUT
                        ? words.say(
                                "recall.count.out", Integer.toString(list.cards()), Integer.toString(list.toComeBack()))
                        : words.say("recall.count.to-come-back", Integer.toString(list.cards())));
        flow.down(2);
        for (RecallList.Held held : list.holders()) {
            draw(held);
        }
        flow.down(6);
        small(words.say("recall.note"));
        small(words.say(
                "register.head",
                list.head().printed(),
                Long.toString(list.head().entries())));
        flow.finish(imprint);
    }

    private void draw(RecallList.Held held) throws IOException {
        flow.down(6);
        flow.need(HOLDER + 3 * ROW);
        flow.text(new TextFit(Weight.BOLD, 12, 8, flow.width(), 2), holder(held.holder(), words));
        flow.down(2);
        PageTable table = table(
                ROW,
                column("recall.card", 1.9, Align.LEFT),
                column("recall.title", 2.9, Align.LEFT),
                column("register.factor", 0.7, Align.RIGHT),
                column("recall.state", 2, Align.LEFT),
                column("recall.since", 1.5, Align.LEFT),
                column("recall.became", 2.1, Align.LEFT),
                column("recall.signed", 1.4, Align.LEFT));
        for (HeldCard card : held.cards()) {
            table.row(
                    List.of(
                            card.print().recordId(),
                            card.title(),
                            card.factorPercent().map(words::number).orElse(""),
                            words.say("recall.is." + card.standing().symbol()),
                            card.since().map(since -> moment(since, words)).orElse(""),
                            "",
                            ""),
                    said(card));
        }
    }

    /** Says when the card went out, whether the holder knows that it is to come back, and what was remarked. */
    private List<String> said(HeldCard card) {
        List<String> said = new ArrayList<>();
        for (CardStep step : card.steps()) {
            boolean wentOut = step.act() == CardStep.Act.HANDED_OUT || step.act() == CardStep.Act.FOUND;
            if (wentOut) {
                said.clear();
            }
            if (wentOut || step.act() == CardStep.Act.ACKNOWLEDGED) {
                String act = words.say("recall.act." + step.act().symbol(), moment(step.at(), words), step.by());
                said.add(step.remark().isBlank() ? act : words.say("recall.remark", act, step.remark()));
            }
        }
        return said.isEmpty() ? List.of(words.say("recall.unsaid")) : said;
    }
}
