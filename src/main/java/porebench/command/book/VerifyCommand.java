package porebench.command.book;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.command.reply.TrainingReport;
import porebench.method.Problem;
import porebench.record.book.BookCheck;
import porebench.record.book.LabBook;
import porebench.record.chain.Head;

/** {@code verify}: whether a lab book is whole and its histories are as they were written. */
@Command(name = "verify")
public final class VerifyCommand extends BookCommand {
    @ArgGroup(exclusive = false)
    private @Nullable Noted noted;

    /** How far the lab book reached once, as a card says. */
    private static final class Noted {
        @Option(names = "--head", required = true, paramLabel = "<hash>")
        private String hash = "";

        @Option(names = "--entries", required = true, paramLabel = "<n>")
        private long entries;
    }

    public VerifyCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        Optional<Head> head = Optional.empty();
        if (noted != null) {
            Optional<String> hash = Head.parseHash(noted.hash);
            if (hash.isEmpty() || noted.entries < 0) {
                return CommandOutcome.refused(Problem.error("head", "command.no-head", noted.hash, noted.entries));
            }
            head = Optional.of(new Head(hash.get(), noted.entries));
        }
        try (LabBook book = open()) {
            BookCheck check = book.check(head, here().progress());
            CommandOutcome outcome =
                    new CommandOutcome(!check.isIntact(), Optional.of(new VerifyReport(check, head)), check.problems());
            return isTraining(book) ? outcome.with(report -> new TrainingReport(report, words())) : outcome;
        }
    }

    /** Asks a lab book in which perhaps nothing can be read. */
    private static boolean isTraining(LabBook book) {
        try {
            return book.isTraining();
        } catch (RuntimeException unreadable) {
            return false;
        }
    }

    private final class VerifyReport implements Report {
        private final BookCheck check;
        private final Optional<Head> noted;

        VerifyReport(BookCheck check, Optional<Head> noted) {
            this.check = check;
            this.noted = noted;
        }

        @Override
        public void json(JsonFields json) {
            json.flag("intact", check.isIntact());
            json.flag("integrity", check.integrity());
            json.flag("schema", check.schema());
            json.text("head", check.head().shortHash());
            json.whole("entries", check.head().entries());
            json.list("faults", check.faults(), (fields, fault) -> {
                fields.whole("entry", Optional.of((int) fault.entry()).filter(entry -> entry > 0));
                fields.text("place", fault.place());
                fields.text("code", fault.code());
            });
            VerifyCommand.this.json(json, check.counts());
        }

        @Override
        public void text(TextPage page) {
            String book = bookFile().toString();
            page.line(
                    check.isIntact()
                            ? words().get("verify.intact", book)
                            : words().get(
                                            "verify.broken",
                                            book,
                                            Integer.toString(check.faults().size())));
            page.line(words().get(check.integrity() ? "verify.integrity" : "verify.no-integrity"));
            page.line(words().get(check.schema() ? "verify.schema" : "verify.no-schema"));
            page.line(words().get(
                            "verify.head",
                            Long.toString(check.head().entries()),
                            check.head().printed()));
            if (check.isIntact()) {
                page.line(
                        noted.isPresent()
                                ? words().get(
                                                "verify.noted",
                                                Long.toString(noted.get().entries()),
                                                noted.get().printed())
                                : words().get("verify.not-noted"));
            }
            VerifyCommand.this.text(page, check.counts());
        }
    }
}
