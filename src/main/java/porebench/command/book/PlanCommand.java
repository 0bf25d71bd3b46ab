package porebench.command.book;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.Ports;
import porebench.command.reply.Reply;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.WhereTo;
import porebench.evidence.paper.PlanSheet;
import porebench.evidence.plan.PlannedTest;
import porebench.evidence.plan.WeekPlan;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.method.sample.WeighOut;
import porebench.port.Paper;
import porebench.quantity.MassUnit;
import porebench.record.Laboratory;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** {@code plan}: the tests of a week, the most pressing first. */
@Command(name = "plan")
public final class PlanCommand extends BookCommand {
    private static final BigDecimal GREATEST_SPARE = BigDecimal.valueOf(200);

    @Option(names = "--from", paramLabel = "<date>")
    private @Nullable LocalDate from;

    @Option(names = "--most", paramLabel = "<count>")
    private int most = 10;

    @Option(names = "--spare", paramLabel = "<percent>")
    private BigDecimal spare = BigDecimal.TEN;

    @Option(names = "--mix-id", paramLabel = "<id>")
    private List<MixId> added = new ArrayList<>();

    @Option(names = "--without", paramLabel = "<id>")
    private List<MixId> without = new ArrayList<>();

    @Option(names = "--out", paramLabel = "<file>")
    private @Nullable Path out;

    @Option(names = "--paper", paramLabel = "<size>")
    private Paper paper = Paper.A4;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public PlanCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        try (LabBook book = open()) {
            List<Problem> problems = check(book);
            if (Problem.anyError(problems)) {
                return CommandOutcome.refused(problems);
            }
            LaboratoryStanding standing = LaboratoryStanding.of(book, here().progress());
            LocalDate first = from == null ? here().today() : from;
            WeekPlan plan = WeekPlan.of(
                    book, standing, new WeekPlan.Wish(first, most, spare.doubleValue(), added, Set.copyOf(without)));
            if (out != null) {
                Optional<Laboratory> laboratory =
                        book.latest(Laboratory.class, Laboratory.ID).map(Version::value);
                PlanSheet sheet = PlanSheet.of(laboratory, plan, problemText(), MassUnit.KILOGRAM);
                ports().press().get().write(sheet, paper, here().locale(), whereTo.file(out));
                acted();
            }
            return marked(book, CommandOutcome.done(said().report(plan), problems));
        }
    }

    private List<Problem> check(LabBook book) {
        List<Problem> problems = new ArrayList<>();
        if (most < 1) {
            problems.add(Problem.error("most", "command.not-positive", "--most", most));
        }
        if (spare.signum() < 0 || spare.compareTo(GREATEST_SPARE) > 0) {
            problems.add(Problem.error("spare", "command.spare-out-of-range", spare, GREATEST_SPARE));
        }
        if (out != null
                && !String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            problems.add(Problem.error("out", "plan.not-pdf", out.toString()));
        }
        Stream.concat(added.stream(), without.stream())
                .distinct()
                .filter(mix -> book.latest(MixDesign.class, mix.text()).isEmpty())
                .forEach(mix ->
                        problems.add(Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), mix.text())));
        added.stream()
                .filter(without::contains)
                .forEach(mix -> problems.add(Problem.error("without", "plan.added-and-left-out", mix.text())));
        return problems;
    }

    private ReportLayout<WeekPlan> said() {
        ReportLayout<WeighOut.Line> lines = this.<WeighOut.Line>laidOut()
                .text("source", WeighOut.Line::source)
                .text("name", WeighOut.Line::name)
                .text("role", line -> line.role().symbol())
                .field((json, line) -> json.number("kilogramsEach", line.each().kilograms()))
                .field((json, line) ->
                        json.number("kilogramsToFetch", line.total().kilograms()));
        ReportLayout<PlannedTest> tests = this.<PlannedTest>laidOut()
                .text("mixId", "register.mix", test -> test.mixId().text())
                .text("need", test -> test.need().symbol())
                .cell(
                        "plan.need",
                        test -> words().get("plan.need." + test.need().symbol()))
                .field((json, test) -> json.text("title", test.title()))
                .field((json, test) -> json.text("plant", test.plant()))
                .text("state", test -> test.state().symbol())
                .field((json, test) -> json.date("withoutFactorSince", test.uncoveredSince()))
                .cell("register.without-since", test -> or(test.uncoveredSince()))
                .field((json, test) -> json.date("recheckBy", test.recheckBy()))
                .cell("register.recheck-by", test -> or(test.recheckBy()))
                .whole("cardsOut", "plan.cards-out", PlannedTest::cardsOut)
                .field((json, test) ->
                        json.text("determinationId", test.determination().map(DeterminationId::text)))
                .whole("trials", "register.trials", PlannedTest::trials)
                .field((json, test) -> json.text("meterId", test.meter().map(MeterId::text)))
                .cell("plan.meter", test -> test.meter().map(MeterId::text).orElse(NumberText.NONE))
                .field((json, test) -> json.list(
                        "components", test.weighOut().map(WeighOut::lines).orElse(List.of()), lines::json))
                .field((json, test) -> Reply.problems(json, "doubts", test.doubts(), problemText()))
                .cell("register.mix-title", PlannedTest::title);
        ReportLayout<WeekPlan.Fetch> fetches = this.<WeekPlan.Fetch>laidOut()
                .text("source", "plan.source", WeekPlan.Fetch::source)
                .text("name", "plan.name", WeekPlan.Fetch::name)
                .text("role", fetch -> fetch.role().symbol())
                .field((json, fetch) -> json.number("kilograms", fetch.total().kilograms()))
                .cell("plan.fetch", fetch -> shown().fixed(fetch.total().kilograms(), 1))
                .whole("tests", "plan.tests", WeekPlan.Fetch::tests);
        return this.<WeekPlan>laidOut()
                .text("from", plan -> plan.from().toString())
                .text("until", plan -> plan.until().toString())
                .line(plan -> words().get(
                                "plan.title",
                                plan.from().toString(),
                                plan.until().toString()))
                .field((json, plan) -> json.list("tests", plan.tests(), tests::json))
                .alone((page, plan) -> {
                    page.gap();
                    if (plan.tests().isEmpty()) {
                        page.line(words().get("plan.none"));
                    } else {
                        tests.table(page, plan.tests());
                    }
                    plan.tests()
                            .forEach(test -> test.doubts()
                                    .forEach(doubt -> page.line(problemText().say(doubt))));
                    if (plan.left() > 0) {
                        page.line(words().get("plan.left", Integer.toString(plan.left())));
                    }
                })
                .whole("left", WeekPlan::left)
                .field((json, plan) -> json.list("sources", plan.fetches(), fetches::json))
                .alone((page, plan) -> {
                    if (!plan.fetches().isEmpty()) {
                        page.gap();
                        page.line(words().get("plan.fetches", shown().exact(spare)));
                        fetches.table(page, plan.fetches());
                    }
                });
    }

    private static String or(Optional<?> value) {
        return value.map(Object::toString).orElse(NumberText.NONE);
    }
}
