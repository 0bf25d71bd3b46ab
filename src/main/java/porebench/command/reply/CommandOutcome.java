package porebench.command.reply;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import porebench.method.Answer;
import porebench.method.Problem;

/**
 * What became of a command.
 *
 * @param isRefused whether it was refused, which is told by the exit status
 * @param report its answer; may be there with a refusal too
 * @param problems everything wrong or doubtful; warnings do not refuse
 * @param log the file in which the details of a failure stand; empty when nothing failed or there is no log
 */
public record CommandOutcome(boolean isRefused, Optional<Report> report, List<Problem> problems, Optional<Path> log) {
    public CommandOutcome {
        problems = List.copyOf(problems);
    }

    public CommandOutcome(boolean isRefused, Optional<Report> report, List<Problem> problems) {
        this(isRefused, report, problems, Optional.empty());
    }

    /** Returns the outcome of a command that the world outside let down. */
    public static CommandOutcome failed(Problem problem, Optional<Path> log) {
        return new CommandOutcome(true, Optional.empty(), List.of(problem), log);
    }

    public static CommandOutcome done(Report report, List<Problem> problems) {
        return new CommandOutcome(false, Optional.of(report), problems);
    }

    public static CommandOutcome refused(List<Problem> problems) {
        return new CommandOutcome(true, Optional.empty(), problems);
    }

    public static CommandOutcome refused(Problem... problems) {
        return refused(List.of(problems));
    }

    /** Returns this outcome with another report made of its own, if it has one. */
    public CommandOutcome with(UnaryOperator<Report> other) {
        return new CommandOutcome(isRefused, report.map(other), problems, log);
    }

    /** Returns this failure as that of the report alone: what the command was for had come about. */
    public CommandOutcome butDone(String what) {
        return new CommandOutcome(
                false, Optional.empty(), List.of(Problem.warning("", "command.done-without-report", what)), log);
    }

    /** Returns this outcome with more to be told, before what it tells itself. */
    public CommandOutcome with(List<Problem> more) {
        return new CommandOutcome(
                isRefused,
                report,
                Stream.concat(more.stream().filter(each -> !problems.contains(each)), problems.stream())
                        .toList(),
                log);
    }

    /** Returns the outcome of a computation: what is said of its result, or the refusal it gave. */
    public static <T> CommandOutcome of(Answer<T> answer, ReportLayout<T> layout) {
        return answer.value().isPresent()
                ? done(layout.report(answer.value().get()), answer.problems())
                : refused(answer.problems());
    }
}
