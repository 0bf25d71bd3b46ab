package porebench.command.book;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.StopReport;
import porebench.command.reply.TextPage;
import porebench.evidence.intake.Incoming;
import porebench.evidence.intake.Intake;
import porebench.evidence.intake.Sheet;
import porebench.evidence.intake.SheetStyle;
import porebench.evidence.standing.TrialsTaken;
import porebench.method.Problem;
import porebench.port.LabSheets;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;

/** {@code import}: records from CSV files into a lab book, all of them or none unless only good rows are asked for. */
@Command(name = "import")
public final class ImportCommand extends BookCommand {
    @Option(names = "--good-rows")
    private boolean goodRows;

    @Option(names = "--new")
    private boolean begin;

    @Option(names = "--columns", paramLabel = "<sign>")
    private SheetStyle.Apart apart = SheetStyle.DOCUMENTED.apart();

    @Option(names = "--decimal", paramLabel = "<sign>")
    private SheetStyle.Decimal decimal = SheetStyle.DOCUMENTED.decimal();

    @Option(names = "--kept-because", paramLabel = "<text>")
    private String keptBecause = "";

    @Mixin
    private final Keeper who = new Keeper();

    @Parameters(arity = "1..*", paramLabel = "<file>", descriptionKey = "files")
    private List<Path> files = List.of();

    public ImportCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        List<Incoming> incoming = read(problems);
        if (!begin) {
            try (LabBook book = open()) {
                return take(book, incoming, problems);
            }
        }
        List<CommandOutcome> outcome = new ArrayList<>();
        Optional<LabBook> begun = ports().shelf().get().create(bookFile(), fresh -> {
            outcome.add(take(fresh, incoming, problems));
            return !outcome.get(0).isRefused();
        });
        begun.ifPresent(book -> {
            acted();
            book.close();
        });
        return outcome.get(0);
    }

    private List<Incoming> read(List<Problem> problems) {
        LabSheets sheets = ports().sheets().get();
        SheetStyle style = new SheetStyle(apart, decimal).in(here().zone());
        List<Incoming> incoming = new ArrayList<>();
        for (Path file : files) {
            Sheet<Kept> sheet = sheets.records(file, style, here().progress());
            problems.addAll(sheet.problems());
            incoming.addAll(Sheet.incoming(sheet));
        }
        return incoming;
    }

    private CommandOutcome take(LabBook book, List<Incoming> incoming, List<Problem> problems) {
        Intake.Result checked = explained(Intake.check(book, incoming, here().now(), here().progress()));
        problems.addAll(checked.problems());
        boolean nothingGood = checked.drafts().isEmpty() && checked.alreadyThere() == 0;
        if (Problem.anyError(problems) && (!goodRows || nothingGood)) {
            return CommandOutcome.refused(problems);
        }
        if (checked.doubts() > 0) {
            problems.add(Problem.error("keptBecause", "import.reason-missing", checked.doubts()));
            return CommandOutcome.refused(problems);
        }
        if (!checked.drafts().isEmpty()) {
            String name = who.name(here());
            List<Problem> refused =
                    book.keep(checked.drafts(), name, words().get("import.why", fileNames()), here().progress());
            if (!refused.isEmpty()) {
                problems.addAll(refused);
                return CommandOutcome.refused(problems);
            }
            if (!begin) {
                acted();
            }
        }
        return marked(book, CommandOutcome.done(new ImportReport(book, checked), problems));
    }

    private Intake.Result explained(Intake.Result checked) {
        return keptBecause.isBlank() ? checked : checked.keptFor(keptBecause.strip());
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
        private final List<TrialsTaken> determinations;
        private final StopReport stopReport = new StopReport(here().locale());

        ImportReport(LabBook book, Intake.Result checked) {
            List<Trial> trials = checked.drafts().stream()
                    .map(Draft::value)
                    .filter(Trial.class::isInstance)
                    .map(Trial.class::cast)
                    .toList();
            determinations = TrialsTaken.of(book, trials, here().progress());
            for (RecordKind kind : RecordKind.values()) {
                kept.put(kind, 0);
            }
            for (Draft draft : checked.drafts()) {
                kept.merge(draft.value().kind(), 1, Integer::sum);
            }
            newVersions =
                    checked.drafts().stream().filter(draft -> !draft.isNew()).count();
            alreadyThere = checked.alreadyThere();
        }

        @Override
        public void json(JsonFields json) {
            json.text("book", bookFile().toString());
            ImportCommand.this.json(json, kept);
            json.whole("newVersions", newVersions);
            json.whole("alreadyThere", alreadyThere);
            json.list("determinations", determinations, (fields, one) -> {
                fields.text("determinationId", one.id().text());
                fields.text("mixId", one.mixId().text());
                fields.whole("accepted", one.counted());
                stopReport.json(fields, one.stop());
            });
        }

        @Override
        public void text(TextPage page) {
            page.line(words().get("import.kept", bookFile().toString()));
            ImportCommand.this.text(page, kept);
            page.line(words().get("import.new-versions", Long.toString(newVersions)));
            page.line(words().get("import.already-there", Integer.toString(alreadyThere)));
            for (TrialsTaken one : determinations) {
                one.stop()
                        .ifPresent(stop -> page.line(words().get(
                                        "import.determination",
                                        one.id().text(),
                                        Integer.toString(one.counted()),
                                        stopReport.sentence(stop))));
            }
        }
    }
}
