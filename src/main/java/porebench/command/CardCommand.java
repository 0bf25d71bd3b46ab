package porebench.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.method.Problem;
import porebench.record.Evidence;
import porebench.record.LabBook;
import porebench.record.MixId;
import porebench.record.RecordKind;
import porebench.record.port.Paper;

/** {@code card}: the factor card of a mix as a PDF file. */
@Command(name = "card")
final class CardCommand extends BookCommand {
    @Option(names = "--mix-id", required = true, paramLabel = "<id>")
    private MixId mixId;

    @Option(names = "--out", required = true, paramLabel = "<file>")
    private Path out;

    @Option(names = "--paper", paramLabel = "<size>")
    private Paper paper = Paper.A6;

    @Option(names = "--who", paramLabel = "<name>")
    private @Nullable String who;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    CardCommand(Surroundings here, Ports ports) {
        super(here, ports);
    }

    @Override
    Outcome carryOut() {
        try (LabBook book = open()) {
            Optional<Evidence> evidence = Evidence.of(book, mixId);
            if (evidence.isEmpty()) {
                return Outcome.refused(Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), mixId.text()));
            }
            Optional<Problem> refusal = CardHandout.refusal(evidence.get(), here().today());
            if (refusal.isPresent()) {
                return Outcome.refused(refusal.get());
            }
            List<Problem> problems = new ArrayList<>();
            CardHandout handout = new CardHandout(here(), book, ports().press().get());
            String name = who == null || who.isBlank() ? here().user() : who.strip();
            Outcome outcome = handout.handOut(
                            evidence.get(), paper, whereTo.file(out), name, words().say("card.why"), problems)
                    .map(handed -> Outcome.done(new CardReport(handed), problems))
                    .orElseGet(() -> Outcome.refused(problems));
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
            json.text("path", handed.file().toString());
            json.text("mixId", handed.issue().mixId().text());
            json.whole("revision", handed.issue().revision());
            json.number("factorPercent", handed.issue().factorPercent());
            json.whole("number", handed.print().number());
            json.text("paper", handed.print().paper());
        }

        @Override
        public void text(TextPage page) {
            page.line(words().say("card.written", handed.file().toString()));
            page.row(
                    words().say("card.factor"), shown().exact(handed.issue().factorPercent()), words().say("unit.air"));
            page.row(
                    words().say("card.revision"),
                    Integer.toString(handed.issue().revision()),
                    "");
        }
    }
}
