package porebench.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.Draft;
import porebench.record.Incoming;
import porebench.record.Intake;
import porebench.record.Kept;
import porebench.record.LabBook;
import porebench.record.RecordKind;
import porebench.record.port.LabSheets;
import porebench.record.port.Sheet;

/** {@code import}: records from CSV files into a lab book, all of them or none unless only good rows are asked for. */
@Command(name = "import")
final class ImportCommand extends BookCommand {
    @Option(names = "--good-rows")
    private boolean goodRows;

    @Option(names = "--new")
    private boolean begin;

    @Option(names = "--who", paramLabel = "<name>")
    private @Nullable String who;

    @Parameters(arity = "1..*", paramLabel = "<file>", descriptionKey = "files")
    private List<Path> files = List.of();

    ImportCommand(Surroundings here, Ports ports) {
        super(here, ports);
    }

    @Override
    Outcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        List<Incoming> incoming = read(problems);
        if (!begin) {
            try (LabBook book = open()) {
                return take(book, incoming, problems);
            }
        }
        List<Outcome> outcome = new ArrayList<>();
        try (LabBook book = NewBook.begin(
                ports().shelf().get(), bookFile(), fresh -> outcome.add(take(fresh, incoming, problems)))) {
            if (outcome.get(0).isRefused()) {
                NewBook.takeAway(book, bookFile());
            }
            return outcome.get(0);
        }
    }

    private List<Incoming> read(List<Problem> problems) {
        LabSheets sheets = ports().sheets().get();
        List<Incoming> incoming = new ArrayList<>();
        for (Path file : files) {
            Sheet<Kept> sheet = sheets.records(file);
            problems.addAll(sheet.problems());
            sheet.rows()
                    .forEach(row -> incoming.add(new Incoming(new Place(sheet.file(), row.line(), 0), row.value())));
        }
        return incoming;
    }

    private Outcome take(LabBook book, List<Incoming> incoming, List<Problem> problems) {
        Intake.Result checked = Intake.check(book, incoming);
        problems.addAll(checked.problems());
        boolean nothingGood = checked.drafts().isEmpty() && checked.alreadyThere() == 0;
        if (Problem.anyError(problems) && (!goodRows || nothingGood)) {
            return Outcome.refused(problems);
        }
        if (!checked.drafts().isEmpty()) {
            String name = who == null || who.isBlank() ? here().user() : who.strip();
            List<Problem> refused = book.keep(checked.drafts(), name, words().say("import.why", fileNames()));
            if (!refused.isEmpty()) {
                problems.addAll(refused);
                return Outcome.refused(problems);
            }
        }
        return marked(book, Outcome.done(new ImportReport(checked), problems));
    }

    private String fileNames() {
        return String.join(
                ", ",
                files.stream().map(file -> String.valueOf(file.getFileName())).toList());
    }

    private final class ImportReport implements Report {
        private final Map<RecordKind, Integer> kept = new LinkedHashMap<>();
        private final long newVersions;
        private final int alreadyThere;

        ImportReport(Intake.Result checked) {
            for (RecordKind kind : RecordKind.values()) {
                kept.put(kind, 0);
            }
            for (Draft draft : checked.drafts()) {
                kept.merge(draft.value().kind(), 1, Integer::sum);
            }
            newVersions = checked.drafts().stream()
                    .filter(draft -> draft.basedOn() > 0)
                    .count();
            alreadyThere = checked.alreadyThere();
        }

        @Override
        public void json(JsonFields json) {
            json.text("book", bookFile().toString());
            ImportCommand.this.json(json, kept);
            json.whole("newVersions", newVersions);
            json.whole("alreadyThere", alreadyThere);
        }

        @Override
        public void text(TextPage page) {
            page.line(words().say("import.kept", bookFile().toString()));
            ImportCommand.this.text(page, kept);
            page.line(words().say("import.new-versions", Long.toString(newVersions)));
            page.line(words().say("import.already-there", Integer.toString(alreadyThere)));
        }
    }
}
