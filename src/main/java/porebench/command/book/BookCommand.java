package porebench.command.book;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Option;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.TextPage;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;

/** What the commands on a lab book have in common. */
abstract class BookCommand extends OneCommand {
    @Option(names = "--book", required = true, paramLabel = "<file>")
    private Path book;

    BookCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    final Path bookFile() {
        return book;
    }

    final LabBook open() {
        return ports().shelf().get().open(book);
    }

    /** Returns how many records of each kind a lab book has. */
    static Map<RecordKind, Integer> counts(LabBook book) {
        Map<RecordKind, Integer> counts = new LinkedHashMap<>();
        for (RecordKind kind : RecordKind.values()) {
            counts.put(kind, book.ids(kind).size());
        }
        return counts;
    }

    final void json(JsonFields json, Map<RecordKind, Integer> counts) {
        json.group("counts", fields -> counts.forEach((kind, count) -> fields.whole(kind.symbol(), count)));
    }

    final void text(TextPage page, Map<RecordKind, Integer> counts) {
        counts.forEach((kind, count) -> page.row(words().get("kind." + kind.symbol()), count.toString(), ""));
    }
}
