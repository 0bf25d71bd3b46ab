package porebench.command.book;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.command.reply.WhereTo;
import porebench.evidence.paper.CardLook;
import porebench.method.Answer;
import porebench.port.CardHandout;
import porebench.port.Paper;
import porebench.record.FactorIssue;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;

/** {@code card}: the factor card of a mix as a PDF file. */
@Command(name = "card")
public final class CardCommand extends BookCommand {
    @Option(names = "--mix-id", required = true, paramLabel = "<id>")
    private MixId mixId;

    @Option(names = "--out", required = true, paramLabel = "<file>")
    private Path out;

    @Option(names = "--paper", paramLabel = "<size>")
    private Paper paper = Paper.A6;

    @Mixin
    private final Keeper who = new Keeper();

    @Mixin
    private final CardLanguages languages = new CardLanguages();

    @Option(names = "--chart")
    private boolean chart;

    @Option(names = "--marked")
    private boolean marked;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public CardCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        if (languages.problem().isPresent()) {
            return CommandOutcome.refused(languages.problem().get());
        }
        CardLook look = new CardLook(paper.card().orElseThrow(), languages.chosen(here()), Optional.empty(), 1, chart);
        try (LabBook book = open()) {
            String name = who.name(here());
            CardHandout handout = new CardHandout(book, ports().press().get(), here().locale());
            Answer<CardHandout.Handed> answer = handout.toFile(
                    new CardHandout.Wish(
                            mixId, Optional.empty(), paper, marked, here().now(), name, words().get("card.why")),
                    look,
                    whereTo.file(out));
            CommandOutcome outcome = answer.value()
                    .map(handed -> CommandOutcome.done(new CardReport(handed), answer.problems()))
                    .orElseGet(() -> CommandOutcome.refused(answer.problems()));
            return marked(book, outcome);
        }
    }

    private final class CardReport implements Report {
        private final CardHandout.Handed handed;

        CardReport(CardHandout.Handed handed) {
            this.handed = handed;
        }

        @Override
        public void json(JsonFields json) {
            FactorIssue issue = handed.card().issue();
            json.text("path", whereTo.file(out).path().toString());
            json.text("mixId", issue.mixId().text());
            json.whole("revision", issue.revision());
            json.number("factorPercent", issue.factorPercent());
            json.text("inForceFrom", issue.inForceFrom().toString());
            json.text("inForceAt", Optional.of(issue.terms().atText()).filter(at -> !at.isEmpty()));
            json.text("conditions", Optional.of(issue.terms().conditions()).filter(only -> !only.isEmpty()));
            json.whole("number", handed.print().number());
            json.text("paper", handed.print().paper());
            json.text("state", handed.card().state().symbol());
            json.flag("marked", handed.card().isMarked());
            json.text("head", handed.card().head().shortHash());
            json.whole("entries", handed.card().head().entries());
        }

        @Override
        public void text(TextPage page) {
            FactorIssue issue = handed.card().issue();
            page.line(words().get("card.written", whereTo.file(out).path().toString()));
            if (!handed.card().isMarked()) {
                page.row(words().get("card.factor"), shown().exact(issue.factorPercent()), words().get("unit.air"));
            }
            page.row(words().get("card.revision"), Integer.toString(issue.revision()), "");
            if (issue.terms().at().isPresent()) {
                page.row(
                        words().get("card.in-force-from"),
                        issue.inForceFrom() + " " + issue.terms().atText(),
                        "");
            }
            if (!issue.terms().conditions().isBlank()) {
                page.line(words().get("issue.conditions", issue.terms().conditions()));
            }
        }
    }
}
