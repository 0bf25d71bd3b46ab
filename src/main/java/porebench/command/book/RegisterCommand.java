package porebench.command.book;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.Ports;
import porebench.command.reply.Reply;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;

/** {@code register}: every mix, its factor in force, what is due and what is missing. */
@Command(name = "register")
public final class RegisterCommand extends BookCommand {
    @Option(names = "--on", paramLabel = "<date>")
    private @Nullable LocalDate on;

    @Option(names = "--anew")
    private boolean anew;

    public RegisterCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        LocalDate day = on == null ? here().today() : on;
        try (LabBook book = open()) {
            Progress progress = here().progress();
            LaboratoryStanding standing =
                    anew ? LaboratoryStanding.anew(book, progress) : LaboratoryStanding.of(book, progress);
            return marked(book, CommandOutcome.done(new RegisterReport(day, standing.rows(day)), List.of()));
        }
    }

    private final class RegisterReport implements Report {
        private final LocalDate day;
        private final List<RegisterRow> rows;

        RegisterReport(LocalDate day, List<RegisterRow> rows) {
            this.day = day;
            this.rows = rows;
        }

        private long count(FactorState state) {
            return rows.stream().filter(row -> row.state() == state).count();
        }

        @Override
        public void json(JsonFields json) {
            json.text("on", day.toString());
            json.group("counts", fields -> {
                for (FactorState state : FactorState.values()) {
                    fields.whole(state.symbol(), count(state));
                }
            });
            json.list("rows", rows, layout()::json);
        }

        /** The title stands second for programs and last for people. */
        private ReportLayout<RegisterRow> layout() {
            return new ReportLayout<RegisterRow>(words(), shown())
                    .text("mixId", "register.mix", row -> row.mixId().text())
                    .field((json, row) -> json.text("title", row.title()))
                    .field((json, row) -> json.text("state", row.state().symbol()))
                    .cell(
                            "register.state",
                            row -> words().get("state." + row.state().symbol().replace(' ', '-')))
                    .field((json, row) -> json.number("factorPercent", row.factorPercent()))
                    .cell(
                            "register.factor",
                            row -> row.factorPercent().map(shown()::exact).orElse(NumberText.NONE))
                    .field((json, row) -> json.whole("revision", row.revision()))
                    .cell("register.revision", row -> or(row.revision()))
                    .field((json, row) -> json.date("inForceFrom", row.inForceFrom()))
                    .cell("register.in-force-from", row -> or(row.inForceFrom()))
                    .field((json, row) -> json.date("recheckBy", row.recheckBy()))
                    .cell("register.recheck-by", row -> or(row.recheckBy()))
                    .whole("countedTrials", "register.trials", RegisterRow::countedTrials)
                    .field((json, row) -> Reply.problems(json, "missing", row.missing(), problemText()))
                    .cell("register.mix-title", RegisterRow::title);
        }

        @Override
        public void text(TextPage page) {
            page.line(words().get("register.title", day.toString()));
            page.gap();
            layout().table(page, rows);
            if (rows.stream().anyMatch(row -> !row.missing().isEmpty())) {
                page.gap();
                page.line(words().get("register.missing"));
            }
            for (RegisterRow row : rows) {
                for (Problem missing : row.missing()) {
                    page.line(words().get(
                                    "register.missing-line",
                                    row.mixId().text(),
                                    problemText().say(missing)));
                }
            }
        }

        private static String or(Optional<?> value) {
            return value.map(Object::toString).orElse(NumberText.NONE);
        }
    }
}
