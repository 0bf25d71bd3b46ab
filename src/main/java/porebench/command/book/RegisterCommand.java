package porebench.command.book;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
import porebench.command.reply.WhereTo;
import porebench.evidence.FactorState;
import porebench.evidence.Moments;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.CardAlarms;
import porebench.evidence.custody.Custody;
import porebench.evidence.hold.HoldRemark;
import porebench.evidence.hold.LaboratoryHolds;
import porebench.evidence.paper.RegisterList;
import porebench.evidence.standing.Coverage;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Digits;
import porebench.method.Problem;
import porebench.port.Paper;
import porebench.port.RegisterTable;
import porebench.record.Laboratory;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Version;
import porebench.record.id.MeterId;

/** {@code register}: every mix, its factor in force, what is due and what is missing. */
@Command(name = "register")
public final class RegisterCommand extends BookCommand {
    @Option(names = "--on", paramLabel = "<date>")
    private @Nullable LocalDate on;

    @Option(names = "--anew")
    private boolean anew;

    @Option(names = "--out", paramLabel = "<file>")
    private @Nullable Path out;

    @Option(names = "--paper", paramLabel = "<size>")
    private Paper paper = Paper.A4;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public RegisterCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        LocalDateTime moment = on == null ? here().now() : Moments.endOf(on);
        LocalDate day = moment.toLocalDate();
        try (LabBook book = open()) {
            Progress progress = here().progress();
            LaboratoryStanding standing =
                    anew ? LaboratoryStanding.anew(book, progress) : LaboratoryStanding.of(book, progress);
            List<RegisterRow> stand = standing.rows(moment);
            LaboratoryHolds holds = LaboratoryHolds.of(book, standing, stand, moment);
            List<RegisterRow> rows = holds.marked(stand);
            CardAlarms alarms = CardAlarms.of(Custody.ofLaboratory(book, rows, moment));
            Optional<Problem> refused = write(book, moment, rows, alarms);
            return refused.isPresent()
                    ? CommandOutcome.refused(refused.get())
                    : marked(
                            book,
                            CommandOutcome.done(
                                    new RegisterReport(day, alarms.marked(rows), alarms, holds, standing.coverage()),
                                    List.of()));
        }
    }

    /** Writes the register where that is wanted: as a PDF or as CSV, by the ending of the file's name. */
    private Optional<Problem> write(LabBook book, LocalDateTime moment, List<RegisterRow> rows, CardAlarms alarms) {
        if (out == null) {
            return Optional.empty();
        }
        String name = String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT);
        RegisterList list = RegisterList.of(
                book.latest(Laboratory.class, Laboratory.ID).map(Version::value),
                moment,
                rows,
                rows,
                alarms,
                problemText(),
                book.head());
        if (name.endsWith(".csv")) {
            ports().sheets().get().writeTable(whereTo.file(out), RegisterTable.of(list));
        } else if (name.endsWith(".pdf")) {
            ports().press().get().write(list, paper, here().locale(), whereTo.file(out));
        } else {
            return Optional.of(Problem.error("out", "command.register-ending", out.toString()));
        }
        acted();
        return Optional.empty();
    }

    private static void remark(JsonFields json, HoldRemark remark) {
        json.number("percent", remark.shift().percent());
        json.number("low", remark.shift().low());
        json.number("high", remark.shift().high());
        json.text("since", remark.since().toString());
        json.whole("pairs", remark.pairs());
    }

    private final class RegisterReport implements Report {
        private final LocalDate day;
        private final List<RegisterRow> rows;
        private final CardAlarms alarms;
        private final LaboratoryHolds holds;
        private final Coverage coverage;

        RegisterReport(
                LocalDate day, List<RegisterRow> rows, CardAlarms alarms, LaboratoryHolds holds, Coverage coverage) {
            this.day = day;
            this.rows = rows;
            this.alarms = alarms;
            this.holds = holds;
            this.coverage = coverage;
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
            json.group("coverage", fields -> {
                fields.whole("mixes", rows.size());
                fields.whole("covered", RegisterRow.covered(rows));
                fields.list("overTime", coverage.days(), (each, one) -> {
                    each.text("from", one.from().toString());
                    each.whole("mixes", one.mixes());
                    each.whole("covered", one.covered());
                });
            });
            json.group("cardsToComeBack", fields -> {
                fields.whole("cards", alarms.cards());
                fields.whole("mixes", alarms.mixes());
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
                    .field((json, row) -> json.number(
                            "expandedUncertaintyPercent", row.uncertainty().expandedPercent()))
                    .field((json, row) ->
                            json.number("coverageFactor", row.uncertainty().coverageFactor()))
                    .field((json, row) -> json.text(
                            "uncertaintyNote", row.uncertainty().note().map(problemText()::say)))
                    .cell(
                            "register.uncertainty",
                            row -> row.uncertainty()
                                    .expandedPercent()
                                    .map(u -> shown().fixed(Digits.AIR).apply(u.doubleValue()))
                                    .orElse(NumberText.NONE))
                    .field((json, row) -> json.whole("revision", row.revision()))
                    .cell("register.revision", row -> or(row.revision()))
                    .field((json, row) -> json.date("inForceFrom", row.inForceFrom()))
                    .field((json, row) ->
                            json.text("inForceAt", said(row.terms().atText())))
                    .field((json, row) ->
                            json.text("conditions", said(row.terms().conditions())))
                    .cell(
                            "register.in-force-from",
                            row -> (or(row.inForceFrom()) + " " + row.terms().atText()).strip())
                    .field((json, row) -> json.date("recheckBy", row.recheckBy()))
                    .cell("register.recheck-by", row -> or(row.recheckBy()))
                    .whole("countedTrials", "register.trials", RegisterRow::countedTrials)
                    .field((json, row) -> json.text("plant", row.plant()))
                    .field((json, row) -> json.texts(
                            "meters",
                            row.trials().meters().stream().map(MeterId::text).toList()))
                    .field((json, row) -> json.date("firstTrialOn", row.trials().firstOn()))
                    .field((json, row) -> json.date("lastTrialOn", row.trials().lastOn()))
                    .field((json, row) -> json.text(
                            "groupId", row.group().map(ground -> ground.group().text())))
                    .field((json, row) -> json.text(
                            "testedMix",
                            row.group().map(ground -> ground.testedMix().text())))
                    .field((json, row) -> json.date("withoutFactorSince", row.uncoveredSince()))
                    .cell("register.without-since", row -> or(row.uncoveredSince()))
                    .whole("cardsToComeBack", row -> alarms.of(row.mixId()).size())
                    .field((json, row) -> Reply.problems(json, "missing", row.missing(), problemText()))
                    .field((json, row) -> Reply.problems(json, "due", row.due(), problemText()))
                    .field((json, row) -> json.group("recheckG", holds.of(row.mixId()), RegisterCommand::remark))
                    .cell("register.mix-title", RegisterRow::title);
        }

        @Override
        public void text(TextPage page) {
            page.line(words().get("register.title", day.toString()));
            page.line(words().get(
                            "register.covered",
                            Integer.toString(RegisterRow.covered(rows)),
                            Integer.toString(rows.size())));
            if (alarms.cards() > 0) {
                page.line(words().get(
                                "register.alarm", Integer.toString(alarms.cards()), Integer.toString(alarms.mixes())));
            }
            page.gap();
            layout().table(page, rows);
            if (rows.stream().anyMatch(row -> row.group().isPresent())) {
                page.gap();
            }
            rows.forEach(row -> row.group()
                    .ifPresent(ground -> page.line(words().get(
                                    "register.group-line",
                                    row.mixId().text(),
                                    ground.group().text(),
                                    ground.testedMix().text()))));
            said(page, "register.due", RegisterRow::due);
            said(
                    page,
                    "register.missing",
                    row -> row.missing().stream()
                            .filter(missing -> !row.due().contains(missing))
                            .toList());
        }

        private void said(TextPage page, String title, Function<RegisterRow, List<Problem>> what) {
            if (rows.stream().anyMatch(row -> !what.apply(row).isEmpty())) {
                page.gap();
                page.line(words().get(title));
            }
            for (RegisterRow row : rows) {
                for (Problem problem : what.apply(row)) {
                    page.line(words().get(
                                    "register.missing-line",
                                    row.mixId().text(),
                                    problemText().say(problem)));
                }
            }
        }

        private static Optional<String> said(String text) {
            return Optional.of(text).filter(any -> !any.isEmpty());
        }

        private static String or(Optional<?> value) {
            return value.map(Object::toString).orElse(NumberText.NONE);
        }
    }
}
