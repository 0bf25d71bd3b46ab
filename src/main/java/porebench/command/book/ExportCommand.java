package porebench.command.book;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.command.reply.WhereTo;
import porebench.port.LabSheets;
import porebench.port.OutputFolder;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;

/** {@code export}: every kind of record of a lab book as CSV files in a folder. */
@Command(name = "export")
public final class ExportCommand extends BookCommand {
    @Parameters(arity = "1", paramLabel = "<folder>", descriptionKey = "folder")
    private Path folder;

    @Option(names = "--whole")
    private boolean whole;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public ExportCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        try (LabBook book = open()) {
            LabSheets sheets = ports().sheets().get();
            OutputFolder to = whereTo.folder(folder);
            Progress progress = here().progress();
            List<Path> files = whole ? sheets.exportWhole(book, to, progress) : sheets.export(book, to, progress);
            acted();
            return marked(book, CommandOutcome.done(new ExportReport(files, counts(book)), List.of()));
        }
    }

    private final class ExportReport implements Report {
        private final List<Path> files;
        private final Map<RecordKind, Integer> counts;

        ExportReport(List<Path> files, Map<RecordKind, Integer> counts) {
            this.files = files;
            this.counts = counts;
        }

        @Override
        public void json(JsonFields json) {
            json.text("folder", folder.toString());
            json.texts("files", files.stream().map(Path::toString).toList());
            ExportCommand.this.json(json, counts);
        }

        @Override
        public void text(TextPage page) {
            page.line(words().get("export.written", folder.toString()));
            files.forEach(file -> page.line(words().get("export.file", String.valueOf(file.getFileName()))));
            ExportCommand.this.text(page, counts);
        }
    }
}
