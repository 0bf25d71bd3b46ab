package porebench.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import porebench.method.Problem;
import porebench.record.LabBook;
import porebench.record.RecordKind;

/** {@code verify}: whether the histories of a lab book are as they were written. */
@Command(name = "verify")
final class VerifyCommand extends BookCommand {
    VerifyCommand(Surroundings here, Ports ports) {
        super(here, ports);
    }

    @Override
    Outcome carryOut() {
        try (LabBook book = open()) {
            List<Problem> problems = book.verify();
            Optional<Report> report = Optional.of(new VerifyReport(problems.isEmpty(), counts(book)));
            return marked(book, new Outcome(!problems.isEmpty(), report, problems));
        }
    }

    private final class VerifyReport implements Report {
        private final boolean intact;
        private final Map<RecordKind, Integer> counts;

        VerifyReport(boolean intact, Map<RecordKind, Integer> counts) {
            this.intact = intact;
            this.counts = counts;
        }

        @Override
        public void json(JsonFields json) {
            json.flag("intact", intact);
            VerifyCommand.this.json(json, counts);
        }

        @Override
        public void text(TextPage page) {
            page.line(words().say(
                            intact ? "verify.intact" : "verify.broken",
                            bookFile().toString()));
            VerifyCommand.this.text(page, counts);
        }
    }
}
