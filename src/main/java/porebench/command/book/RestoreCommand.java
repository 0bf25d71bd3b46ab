package porebench.command.book;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.method.Answer;
import porebench.port.BookCopy;
import porebench.port.ChainSource;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.chain.Head;

/**
 * {@code restore}: a backup into the place of a lab book, which is moved aside; or a new lab book from the folder of a whole
 * export, with the same chain.
 */
@Command(name = "restore")
public final class RestoreCommand extends BookCommand {
    @Option(names = "--from", required = true, paramLabel = "<file or folder>")
    private Path from;

    public RestoreCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        return Files.isDirectory(from) ? rebuilt() : restored();
    }

    private CommandOutcome restored() {
        Answer<BookCopy> restored = ports().shelf().get().restore(from, bookFile(), here().progress());
        restored.value().ifPresent(done -> acted());
        return restored.value()
                .map(copy ->
                        CommandOutcome.done(new BookCopyReport(copy, "restore.restored", words()), restored.problems()))
                .orElseGet(() -> CommandOutcome.refused(restored.problems()));
    }

    private CommandOutcome rebuilt() {
        ChainSource source = ports().sheets().get().readWhole(from);
        try (LabBook book = ports().shelf().get().rebuild(bookFile(), source)) {
            acted();
            return marked(book, CommandOutcome.done(new RestoreReport(book.head(), counts(book)), List.of()));
        }
    }

    private final class RestoreReport implements Report {
        private final Head head;
        private final Map<RecordKind, Integer> counts;

        RestoreReport(Head head, Map<RecordKind, Integer> counts) {
            this.head = head;
            this.counts = counts;
        }

        @Override
        public void json(JsonFields json) {
            json.text("path", bookFile().toString());
            json.whole("entries", head.entries());
            json.text("head", head.shortHash());
            RestoreCommand.this.json(json, counts);
        }

        @Override
        public void text(TextPage page) {
            page.line(
                    words().get("restore.done", bookFile().toString(), Long.toString(head.entries()), head.printed()));
            RestoreCommand.this.text(page, counts);
        }
    }
}
