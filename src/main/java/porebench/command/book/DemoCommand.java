package porebench.command.book;

import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;

/** {@code demo}: a new lab book with the records of the demo laboratory. */
@Command(name = "demo")
public final class DemoCommand extends BookCommand {
    public DemoCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        try (LabBook book =
                NewBook.begin(ports().shelf().get(), bookFile(), ports().demo().get()::fill)) {
            acted();
            return CommandOutcome.done(new DemoReport(counts(book)), List.of());
        }
    }

    private final class DemoReport implements Report {
        private final Map<RecordKind, Integer> counts;

        DemoReport(Map<RecordKind, Integer> counts) {
            this.counts = counts;
        }

        @Override
        public void json(JsonFields json) {
            json.text("path", bookFile().toString());
            DemoCommand.this.json(json, counts);
        }

        @Override
        public void text(TextPage page) {
            page.line(words().get("demo.written", bookFile().toString()));
            DemoCommand.this.text(page, counts);
        }
    }
}
