package porebench.command.reply;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.FileSystemException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.port.OpeningRefused;
import porebench.port.OutputRefused;
import porebench.port.Spoken;
import porebench.record.book.LabBook;

/**
 * What all commands have in common: {@code --json}, {@code --help}, and that whatever happens ends in one clear answer.
 */
public abstract class OneCommand implements Callable<Integer> {
    private final Machine here;
    private final Ports ports;

    private boolean acted;

    @Option(names = "--json")
    private boolean json;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true)
    private boolean help;

    public OneCommand(Machine here, Ports ports) {
        this.here = here;
        this.ports = ports;
    }

    /** Does what the command is for. */
    protected abstract CommandOutcome carryOut();

    /** Notes that what the command is for has come about: whatever fails from now on, the answer is "done". */
    public final void acted() {
        acted = true;
    }

    @Override
    public final Integer call() {
        Reply reply = new Reply(here);
        try {
            return reply.say(outcome(), json);
        } catch (ParameterException wrongUsage) {
            throw wrongUsage;
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError failure) {
            return reply.say(failed(failure), json);
        }
    }

    private CommandOutcome outcome() {
        try {
            return carryOut();
        } catch (OpeningRefused refused) {
            return CommandOutcome.refused(refused.problem());
        } catch (OutputRefused refused) {
            return CommandOutcome.refused(refused.problems());
        }
    }

    /** Returns what became of the command when something failed: it stays done when it had acted, and only its report is missing. */
    private CommandOutcome failed(Throwable failure) {
        RuntimeException world = failure instanceof RuntimeException runtime
                ? runtime
                : new IllegalStateException(words().get("failed.memory"), failure);
        CommandOutcome failed = CommandOutcome.failed(failed(world, here.locale()), Failures.log(world, here));
        return acted ? failed.butDone(textOf(world, here.locale())) : failed;
    }

    /**
     * Returns what to say when the world failed: what was being done, and what the file system answered. The database's own
     * words are for the log.
     */
    public static Problem failed(RuntimeException failure, Locale locale) {
        String what = textOf(failure, locale);
        Throwable cause = failure;
        while (cause != null && !(cause instanceof IOException)) {
            cause = cause.getCause();
        }
        if (cause == null || what.contains(textOf(cause, locale))) {
            return Problem.error("", "command.failed", what);
        }
        return Problem.error("", "command.failed-because", what, textOf(cause, locale));
    }

    private static String textOf(Throwable failure, Locale locale) {
        if (failure instanceof Spoken spoken) {
            return spoken.say(locale);
        }
        String name = failure.getClass().getSimpleName();
        String message = failure.getMessage();
        if (message == null || message.isBlank()) {
            return name;
        }
        // A file system says only the path; what is wrong with it is in the name of the exception.
        return failure instanceof FileSystemException ? name + " " + message.strip() : message.strip();
    }

    public final Machine here() {
        return here;
    }

    public final Ports ports() {
        return ports;
    }

    public final Texts words() {
        return here.words();
    }

    public final NumberText shown() {
        return new NumberText(here.locale());
    }

    /** Returns an empty layout in the person's language. */
    public final <T> ReportLayout<T> laidOut() {
        return new ReportLayout<>(words(), shown());
    }

    public final ProblemText problemText() {
        return ProblemText.in(here.locale(), here.zone());
    }

    /** Adds the problem that a number given on the command line is not greater than 0. */
    public static void checkPositive(String option, @Nullable BigDecimal number, List<Problem> problems) {
        if (number != null && number.signum() <= 0) {
            problems.add(Problem.error(option, "command.not-positive", "--" + option, number));
        }
    }

    /** Returns an outcome about a lab book, with what is to be told about it, and marked as simulated when it is a training book. */
    public final CommandOutcome marked(LabBook book, CommandOutcome outcome) {
        CommandOutcome told = outcome.with(book.warnings());
        return book.isTraining() ? told.with(report -> new TrainingReport(report, words())) : told;
    }
}
