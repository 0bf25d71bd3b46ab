package porebench.command.study;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.KeptReadings;
import porebench.evidence.study.ValueRow;
import porebench.method.Problem;
import porebench.record.KeptStudy;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.StudyId;

/** What the commands have in common that make a study of readings: these stand in a file, or are kept in a lab book. */
abstract class StudyCommand extends OneCommand {
    @ArgGroup(multiplicity = "1")
    private From from = new From();

    @Mixin
    private final ValuesDivision division = new ValuesDivision();

    /** Where the readings are. */
    static final class From {
        @Option(names = "--values", required = true, paramLabel = "<file>")
        private @Nullable Path values;

        @ArgGroup(exclusive = false, multiplicity = "1")
        private @Nullable OfBook kept;
    }

    static final class OfBook {
        @Option(names = "--book", required = true, paramLabel = "<file>")
        private Path book;

        @Option(names = "--study", required = true, paramLabel = "<id>")
        private StudyId study;
    }

    StudyCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    /** Returns how the readings are laid out. */
    abstract KeptStudy.Layout layout();

    /**
     * Makes the study.
     *
     * @param sheet the readings
     * @param source how the person named where they are
     * @param problems what was found so far
     */
    abstract CommandOutcome study(Sheet<ValueRow> sheet, String source, List<Problem> problems);

    /** Returns the division of the scale that was stated, or what the readings tell of it. */
    final BigDecimal step(double... values) {
        return division.of(values);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        division.check(problems);
        if (from.values != null) {
            return study(
                    ports().sheets().get().table(from.values, layout().columns()), from.values.toString(), problems);
        }
        if (from.kept == null) {
            throw new IllegalStateException("readings must come from a file or a lab book, but come from neither");
        }
        return ofBook(from.kept, problems);
    }

    private CommandOutcome ofBook(OfBook kept, List<Problem> problems) {
        try (LabBook book = ports().shelf().get().open(kept.book)) {
            Optional<KeptStudy> found =
                    book.latest(KeptStudy.class, kept.study.text()).map(Version::value);
            CommandOutcome outcome;
            if (found.isEmpty()) {
                problems.add(missing(kept, book.ids(RecordKind.STUDY)));
                outcome = CommandOutcome.refused(problems);
            } else if (found.get().layout() != layout()) {
                problems.add(Problem.error(
                        "study",
                        "command.study-of-another-kind",
                        kept.study.text(),
                        found.get().layout().word(),
                        layout().word()));
                outcome = CommandOutcome.refused(problems);
            } else {
                outcome = study(KeptReadings.sheet(found.get()), kept.study.text(), problems);
            }
            return marked(book, outcome);
        }
    }

    private static Problem missing(OfBook kept, List<String> there) {
        return there.isEmpty()
                ? Problem.error("study", "command.no-study-kept", kept.study.text(), kept.book.toString())
                : Problem.error(
                        "study",
                        "command.no-such-study",
                        kept.study.text(),
                        kept.book.toString(),
                        String.join(", ", there));
    }
}
