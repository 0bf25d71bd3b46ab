package porebench.command.book;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.WhereTo;
import porebench.evidence.paper.PlanSheet;
import porebench.evidence.plan.KeptPlan;
import porebench.evidence.plan.LoadsAWeek;
import porebench.evidence.plan.PlanText;
import porebench.evidence.plan.WeekPlan;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.method.risk.RiskCheck;
import porebench.port.Paper;
import porebench.quantity.MassUnit;
import porebench.record.Laboratory;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.TestPlan;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** {@code plan}: the tests of a week, as a person arranged them or as they are proposed. */
@Command(name = "plan")
public final class PlanCommand extends BookCommand {
    private static final BigDecimal GREATEST_SPARE = BigDecimal.valueOf(200);

    @Option(names = "--from", paramLabel = "<date>")
    private @Nullable LocalDate from;

    @Option(names = "--most", paramLabel = "<count>")
    private int most = 10;

    @Option(names = "--spare", paramLabel = "<percent>")
    private BigDecimal spare = BigDecimal.TEN;

    @Option(names = "--load-spread", paramLabel = "<percent>")
    private @Nullable BigDecimal loadSpread;

    @Option(names = "--mix-id", paramLabel = "<id>")
    private List<MixId> added = new ArrayList<>();

    @Option(names = "--without", paramLabel = "<id>")
    private List<MixId> without = new ArrayList<>();

    @Option(names = "--mass-unit", paramLabel = "<unit>")
    private MassUnit massUnit = MassUnit.KILOGRAM;

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
            Optional<Version<TestPlan>> kept =
                    from == null ? KeptPlan.on(book, here().today()) : KeptPlan.from(book, from);
            WeekPlan plan =
                    WeekPlan.of(book, standing, wish(kept), kept.map(Version::value), LoadsAWeek.reportedTo(book));
            if (out != null) {
                Optional<Laboratory> laboratory =
                        book.latest(Laboratory.class, Laboratory.ID).map(Version::value);
                PlanSheet sheet = PlanSheet.of(
                        laboratory,
                        plan,
                        kept.filter(any -> added.isEmpty() && without.isEmpty()).map(PlanSheet.Arranged::of),
                        PlanText.in(here().locale()),
                        problemText(),
                        massUnit);
                ports().press().get().write(sheet, paper, here().locale(), whereTo.file(out));
                acted();
            }
            return marked(
                    book,
                    CommandOutcome.done(
                            new PlanReport(words(), shown(), problemText(), here().locale(), massUnit, spare)
                                    .said(plan, kept),
                            problems));
        }
    }

    private WeekPlan.Wish wish(Optional<Version<TestPlan>> kept) {
        LocalDate first = from == null ? kept.map(plan -> plan.value().from()).orElse(here().today()) : from;
        return new WeekPlan.Wish(
                first,
                here().today(),
                most,
                spare.doubleValue(),
                loadSpread == null ? OptionalDouble.empty() : OptionalDouble.of(loadSpread.doubleValue()),
                added,
                Set.copyOf(without));
    }

    private List<Problem> check(LabBook book) {
        List<Problem> problems = new ArrayList<>();
        if (most < 1) {
            problems.add(Problem.error("most", "command.not-positive", "--most", most));
        }
        if (spare.signum() < 0 || spare.compareTo(GREATEST_SPARE) > 0) {
            problems.add(Problem.error("spare", "command.spare-out-of-range", spare, GREATEST_SPARE));
        }
        if (loadSpread != null) {
            problems.addAll(RiskCheck.check(BigDecimal.ONE, loadSpread, BigDecimal.ZERO));
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
}
