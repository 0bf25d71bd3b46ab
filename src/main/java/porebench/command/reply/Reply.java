package porebench.command.reply;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;

/** Says an outcome: as one JSON object on standard output, or as text there with problems on standard error. */
public final class Reply {
    public static final int DONE = 0;
    public static final int REFUSED = 1;
    public static final int WRONG_USAGE = 2;

    private final Machine here;
    private final ProblemText problemText;

    public Reply(Machine here) {
        this.here = here;
        this.problemText = ProblemText.in(here.locale(), here.zone());
    }

    /** Says an outcome and returns the exit status. */
    public int say(CommandOutcome outcome, boolean asJson) {
        here.line().ifPresent(ProgressLine::clear);
        if (asJson) {
            json(outcome);
        } else {
            text(outcome);
        }
        return outcome.isRefused() ? REFUSED : DONE;
    }

    /**
     * Returns the exit status once everything was said: an answer that did not get out whole, to a full disk or a closed pipe,
     * is not done.
     */
    public static int delivered(Machine here, int status) {
        here.err().flush();
        boolean isErrLost = here.err().checkError();
        if (here.out().checkError()) {
            Problem lost = Problem.error("", "command.answer-lost");
            here.err().println(line(lost, here.words(), ProblemText.in(here.locale(), here.zone())));
            here.err().flush();
            return status == DONE ? REFUSED : status;
        }
        return isErrLost && status == DONE ? REFUSED : status;
    }

    private void json(CommandOutcome outcome) {
        byte[] bytes = JsonFields.object(fields -> {
            outcome.report().ifPresent(report -> report.json(fields));
            problems(fields, "problems", outcome.problems(), problemText);
            outcome.log().ifPresent(log -> fields.text("log", log.toString()));
        });
        here.out().write(bytes, 0, bytes.length);
        here.out().flush();
    }

    private void text(CommandOutcome outcome) {
        TextPage page = new TextPage();
        outcome.report().ifPresent(report -> report.text(page));
        // In one piece: a stream that goes to a file or a pipe takes every line as a writing of its own.
        StringWriter text = new StringWriter();
        PrintWriter lines = new PrintWriter(text);
        page.lines().forEach(lines::println);
        here.out().print(text);
        here.out().flush();
        Texts words = here.words();
        outcome.problems().forEach(problem -> here.err().println(line(problem, words, problemText)));
        outcome.log().ifPresent(log -> here.err().println(words.get("problem.log", log.toString())));
        here.err().flush();
    }

    /** Returns a problem as one line: how much it weighs, where it stands and what it is. */
    public static String line(Problem problem, Texts words, ProblemText texts) {
        return words.get(problem.isError() ? "problem.error" : "problem.warning", texts.sayWithPlace(problem));
    }

    /** Writes problems as an array of objects. */
    public static void problems(JsonFields json, String name, List<Problem> problems, ProblemText texts) {
        json.list(name, problems, (fields, problem) -> {
            fields.text("severity", problem.severity().name().toLowerCase(Locale.ROOT));
            fields.text("field", problem.field());
            fields.text("code", problem.code());
            fields.text("message", texts.say(problem));
            fields.text("file", problem.place().map(Place::file));
            fields.whole("line", problem.place().flatMap(Place::line));
            fields.whole("column", problem.place().flatMap(Place::column));
        });
    }
}
