package porebench.command.book;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.method.Answer;
import porebench.port.BookCopy;

/** {@code backup}: a lab book, with what its log holds, as one checked file in a folder. */
@Command(name = "backup")
public final class BackupCommand extends BookCommand {
    @Parameters(paramLabel = "<folder>", descriptionKey = "folder")
    private Path folder;

    public BackupCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        Answer<BookCopy> backup = ports().shelf().get().backUp(bookFile(), folder, here().progress());
        backup.value().ifPresent(done -> acted());
        return backup.value()
                .map(copy -> CommandOutcome.done(new BookCopyReport(copy, "backup.done", words()), backup.problems()))
                .orElseGet(() -> CommandOutcome.refused(backup.problems()));
    }
}
