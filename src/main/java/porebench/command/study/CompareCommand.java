package porebench.command.study;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.change.ChangeDeciding;
import porebench.evidence.change.Comparison;
import porebench.evidence.change.ComparisonText;
import porebench.evidence.change.SourceChange;
import porebench.evidence.intake.Sheet;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.evidence.study.ValueFile;
import porebench.evidence.study.ValueRow;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.profile.Profiles;
import porebench.record.ChangeDecision;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.ComparisonVerdict;
import porebench.statistics.comparison.ReadingSets;

/** {@code compare}: trials before a change against trials after it, out of two files or of a mix in a lab book. */
@Command(name = "compare")
public final class CompareCommand extends OneCommand {
    private static final String DETERMINATION = ValueFile.SIDE.asked().get(0);

    @ArgGroup(multiplicity = "1")
    private From from = new From();

    @Option(names = "--margin", paramLabel = "<number>")
    private @Nullable BigDecimal margin;

    @Mixin
    private final ValuesDivision division = new ValuesDivision();

    /** Where the trials are. */
    static final class From {
        @ArgGroup(exclusive = false, multiplicity = "1")
        private @Nullable OfFiles files;

        @ArgGroup(exclusive = false, multiplicity = "1")
        private @Nullable OfBook kept;
    }

    static final class OfFiles {
        @Option(names = "--before", required = true, paramLabel = "<file>")
        private Path before;

        @Option(names = "--after", required = true, paramLabel = "<file>")
        private Path after;
    }

    static final class OfBook {
        @Option(names = "--book", required = true, paramLabel = "<file>")
        private Path book;

        @Option(names = "--mix-id", required = true, paramLabel = "<id>")
        private MixId mixId;

        @ArgGroup(exclusive = false)
        private @Nullable Decide decide;
    }

    /** What a person decides on the comparison; without one, it is only told. */
    static final class Decide {
        @Option(names = "--decide", required = true, paramLabel = "<decision>")
        private ComparisonVerdict choice;

        @Option(names = "--more", paramLabel = "<count>")
        private @Nullable Integer more;

        @Option(names = "--by", paramLabel = "<name>")
        private String by = "";

        @Option(names = "--reason", paramLabel = "<text>")
        private String reason = "";
    }

    public CompareCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        checkPositive("margin", margin, problems);
        division.check(problems);
        if (from.files != null) {
            return ofFiles(from.files, problems);
        }
        if (from.kept == null) {
            throw new IllegalStateException("trials must come from files or a lab book, but come from neither");
        }
        return Problem.anyError(problems) ? CommandOutcome.refused(problems) : ofBook(from.kept);
    }

    private CommandOutcome ofFiles(OfFiles files, List<Problem> problems) {
        Optional<List<double[]>> before = readings(files.before, problems);
        Optional<List<double[]>> after = readings(files.after, problems);
        if (before.isEmpty() || after.isEmpty() || Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        double step = division.of(
                        DoubleStream.concat(all(before.get()), all(after.get())).toArray())
                .doubleValue();
        double usual = Comparison.usualMargin(Profiles.standard()).doubleValue();
        Comparison comparison = new Comparison(
                BeforeAndAfter.of(
                        ReadingSets.of(before.get()), ReadingSets.of(after.get()), step, false, Optional.empty()),
                margin == null ? usual : margin.doubleValue(),
                step,
                OptionalDouble.empty());
        problems.addAll(comparison.doubts());
        return CommandOutcome.done(CompareReport.of(comparison, words(), shown()), problems);
    }

    private static DoubleStream all(List<double[]> sets) {
        return sets.stream().flatMapToDouble(Arrays::stream);
    }

    /** Returns the readings of a file by their determination; empty, with the problem, where there are not two. */
    private Optional<List<double[]>> readings(Path file, List<Problem> problems) {
        Sheet<ValueRow> sheet = ports().sheets().get().readings(file, DETERMINATION);
        problems.addAll(sheet.problems());
        if (Problem.anyError(sheet.problems())) {
            return Optional.empty();
        }
        List<double[]> sets = Subgroups.of(sheet, DETERMINATION).values();
        long count = all(sets).count();
        if (count < 2) {
            String code = count == 0 ? "command.no-number" : "change.single-reading";
            problems.add(Problem.error("value", code, file.toString()));
            return Optional.empty();
        }
        return Optional.of(sets);
    }

    private CommandOutcome ofBook(OfBook kept) {
        try (LabBook book = ports().shelf().get().open(kept.book)) {
            Optional<Evidence> evidence = Evidence.of(book, kept.mixId);
            if (evidence.isEmpty()) {
                return CommandOutcome.refused(
                        Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), kept.mixId.text()));
            }
            LaboratoryScatter laboratory =
                    LaboratoryStanding.of(book, here().progress()).scatter();
            Answer<SourceChange> answer = margin == null
                    ? SourceChange.of(evidence.get(), laboratory)
                    : SourceChange.of(evidence.get(), laboratory, margin.doubleValue());
            if (answer.value().isEmpty()) {
                return marked(book, CommandOutcome.refused(answer.problems()));
            }
            List<Problem> problems = new ArrayList<>(answer.problems());
            Optional<ChangeDecision> made = Optional.empty();
            if (kept.decide != null) {
                made = decided(book, evidence.get(), answer.value().get(), kept.decide, problems);
                if (made.isEmpty()) {
                    return marked(book, CommandOutcome.refused(problems));
                }
                acted();
            }
            DecidedComparison told = DecidedComparison.of(
                    Evidence.of(book, kept.mixId).orElseThrow(), answer.value().get(), made);
            return marked(book, CommandOutcome.done(CompareReport.of(told, words(), shown(), problemText()), problems));
        }
    }

    /** Keeps a decision and returns it; empty, with the problems, where it is refused. */
    private Optional<ChangeDecision> decided(
            LabBook book, Evidence evidence, SourceChange change, Decide wish, List<Problem> problems) {
        String by = wish.by.isBlank() ? here().user() : wish.by.strip();
        Answer<ChangeDecision> answer = ChangeDeciding.decide(
                evidence,
                change,
                new ChangeDeciding.Wish(wish.choice, Optional.ofNullable(wish.more), here().today(), by, wish.reason));
        problems.addAll(answer.problems());
        if (answer.value().isEmpty()) {
            return Optional.empty();
        }
        // Who decides what the comparison says need not say why.
        String why = wish.reason.isBlank()
                ? ComparisonText.in(here().locale()).say(change.comparison())
                : wish.reason.strip();
        problems.addAll(book.keep(List.of(Draft.of(answer.value().get())), by, why));
        return Problem.anyError(problems) ? Optional.empty() : answer.value();
    }
}
