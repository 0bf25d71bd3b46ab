package porebench.command.book;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.WhereTo;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.field.FieldJudging;
import porebench.evidence.field.FieldOutcome;
import porebench.evidence.field.FieldReadings;
import porebench.evidence.intake.Intake;
import porebench.evidence.intake.Sheet;
import porebench.evidence.intake.SheetStyle;
import porebench.evidence.paper.FieldList;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.port.Paper;
import porebench.port.ReadingsTable;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** {@code readings}: the air of field readings, those of a file without keeping them or those of a lab book, and what is said of each load. */
@Command(name = "readings")
public final class ReadingsCommand extends BookCommand {
    /** So many days back readings of all mixes are shown where nobody says from when. */
    private static final int USUAL_DAYS = 30;

    @Option(names = "--readings", paramLabel = "<file>")
    private @Nullable Path file;

    @Option(names = "--mix-id", paramLabel = "<id>")
    private @Nullable MixId mixId;

    @Option(names = "--from", paramLabel = "<date>")
    private @Nullable LocalDate from;

    @Option(names = "--to", paramLabel = "<date>")
    private @Nullable LocalDate to;

    @Option(names = "--guard", paramLabel = "<number>")
    private @Nullable BigDecimal guard;

    @Option(names = "--out", paramLabel = "<file>")
    private @Nullable Path out;

    @Option(names = "--paper", paramLabel = "<size>")
    private Paper paper = Paper.A4;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public ReadingsCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        Optional<BigDecimal> width = Optional.ofNullable(guard);
        width.flatMap(FieldJudging::checkGuard).ifPresent(problems::add);
        if (from != null && to != null && to.isBefore(from)) {
            problems.add(Problem.error("to", "field.span-backwards", from.toString(), to.toString()));
        }
        if (out != null && !isCsv(out) && !isPdf(out)) {
            problems.add(Problem.error("out", "command.readings-ending", out.toString()));
        }
        try (LabBook book = open()) {
            if (mixId != null && book.latest(MixDesign.class, mixId.text()).isEmpty()) {
                problems.add(Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), mixId.text()));
            }
            List<FieldReading> read = file == null ? List.of() : read(book, file, problems);
            if (Problem.anyError(problems)) {
                return CommandOutcome.refused(problems);
            }
            List<FieldOutcome> outcomes = outcomes(book, width, read);
            problems.addAll(FieldReadings.omissions(outcomes));
            ReadingsReport report = new ReadingsReport(words(), shown(), problemText());
            if (out != null) {
                write(out, new ReadingsList(words(), problemText(), report::before).list(of(book, width), outcomes));
            }
            return marked(book, CommandOutcome.done(report.of(outcomes, width), problems));
        }
    }

    private static boolean isCsv(Path path) {
        return name(path).endsWith(".csv");
    }

    private static boolean isPdf(Path path) {
        return name(path).endsWith(".pdf");
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
    }

    private ReadingsList.Of of(LabBook book, Optional<BigDecimal> width) {
        boolean isOfDays = file == null && mixId == null;
        return new ReadingsList.Of(
                book.latest(Laboratory.class, Laboratory.ID).map(Version::value),
                here().now(),
                isOfDays ? Optional.of(first()) : Optional.ofNullable(from),
                isOfDays ? Optional.of(last()) : Optional.ofNullable(to),
                Optional.ofNullable(mixId),
                width,
                book.head());
    }

    private void write(Path to, FieldList list) {
        if (isCsv(to)) {
            ports().sheets().get().writeTable(whereTo.file(to), ReadingsTable.of(list));
        } else {
            ports().press().get().write(list, paper, here().locale(), whereTo.file(to));
        }
        acted();
    }

    /** A clock that is ahead may have written tomorrow. */
    private LocalDate last() {
        return to != null ? to : here().today().plusDays(1);
    }

    private LocalDate first() {
        return from != null ? from : last().minusDays(USUAL_DAYS);
    }

    /** Reads the readings of a file and holds them against the gate of an import; nothing is kept. */
    private List<FieldReading> read(LabBook book, Path path, List<Problem> problems) {
        Sheet<Kept> sheet =
                ports().sheets().get().records(path, SheetStyle.DOCUMENTED.in(here().zone()), here().progress());
        problems.addAll(sheet.problems());
        List<FieldReading> readings = sheet.values().stream()
                .filter(FieldReading.class::isInstance)
                .map(FieldReading.class::cast)
                .toList();
        if (readings.size() < sheet.rows().size()) {
            problems.add(Problem.error("readings", "field.other-rows", path.toString()));
            return List.of();
        }
        problems.addAll(Intake.check(book, Sheet.incoming(sheet), here().now(), here().progress())
                .problems());
        return readings;
    }

    private List<FieldOutcome> outcomes(LabBook book, Optional<BigDecimal> width, List<FieldReading> read) {
        LaboratoryStanding standing = LaboratoryStanding.of(book, here().progress());
        Supplier<LaboratoryScatter> scatter = standing::scatter;
        FieldReadings readings = new FieldReadings(book, standing::evidence, scatter, width);
        if (file != null) {
            return readings.notKept(read.stream().filter(this::isAskedFor).toList());
        }
        if (mixId != null) {
            return readings.ofMix(mixId, Optional.ofNullable(from), Optional.ofNullable(to));
        }
        return readings.between(first(), last());
    }

    private boolean isAskedFor(FieldReading reading) {
        LocalDate day = reading.readAt().toLocalDate();
        return (mixId == null || mixId.equals(reading.mixId()))
                && (from == null || !day.isBefore(from))
                && (to == null || !day.isAfter(to));
    }
}
