package porebench.desk.frame.book;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.port.BookCopy;
import porebench.port.ChainSource;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.chain.Head;

/**
 * Puts another lab book in a place where one may stand already: a backup, or the demo made anew. What stood there is moved
 * aside and named to the person.
 *
 * <p>The lab book on view is closed first, because nobody may have a file open whose place is taken. When nothing comes of it
 * the window turns back to that lab book.
 */
public final class Replacing {
    private final DeskModel desk;
    private final Tools tools;
    private final Texts texts;
    private final JComponent over;
    private final Turning turning;

    Replacing(DeskModel desk, Texts texts, JComponent over, Turning turning) {
        this.desk = desk;
        this.tools = desk.tools();
        this.texts = texts;
        this.over = over;
        this.turning = turning;
    }

    /** Asks for a backup and for its place, puts it there and turns to it. */
    public void restore() {
        turning.leave(() -> tools.asker()
                .fileToOpen(over, texts.get("restore.backup.title"), Turning.EXTENSION)
                .ifPresent(this::restore));
    }

    private void restore(Path backup) {
        String suggested = turning.file().map(Turning::name).orElse(texts.get("book.new.name") + Turning.EXTENSION);
        tools.asker()
                .place(
                        over,
                        texts.get("restore.place.title"),
                        suggested,
                        file -> texts.get("restore.question", Turning.name(backup), Turning.name(file)),
                        texts.get("restore.action"))
                .ifPresent(place -> replace(
                        place,
                        texts.get("restore.doing", Turning.name(place)),
                        progress -> tools.shelf().restore(backup, place, progress)));
    }

    /** Asks for the folder of a full export and for a new file, builds the lab book anew in it and turns to it. */
    public void rebuild() {
        turning.leave(() -> tools.asker()
                .folder(over, texts.get("rebuild.title"))
                .ifPresent(folder -> tools.asker()
                        .newFile(over, texts.get("restore.place.title"), texts.get("book.new.name") + Turning.EXTENSION)
                        .ifPresent(place -> turning.turn(
                                place,
                                texts.get("restore.doing", Turning.name(place)),
                                () -> {
                                    ChainSource source = tools.sheets().readWhole(folder);
                                    return tools.shelf().rebuild(place, source);
                                },
                                book -> tell(place, Optional.empty(), List.of())))));
    }

    /** Moves the demo lab book aside, makes it anew and turns to it. */
    void demoAnew() {
        InventedBooks invented = turning.invented();
        Path place = invented.demo();
        turning.leave(() -> replace(place, texts.get("book.new.doing", Turning.name(place)), progress -> {
            Answer<Path> aside = tools.shelf().setAside(place);
            if (aside.value().isEmpty()) {
                return Answer.refused(aside.problems());
            }
            invented.makeDemo().accept(place);
            return Answer.of(new BookCopy(place, Head.EMPTY, aside.value()), List.of());
        }));
    }

    /**
     * What came of it.
     *
     * @param answer the lab book in the place, or why there is none
     * @param reading the lab book, open and read; empty when it was refused
     */
    private record Outcome(Answer<BookCopy> answer, Optional<Reading> reading) {}

    private void replace(Path place, String doing, Tasks.Told<Answer<BookCopy>> work) {
        Optional<Path> before = turning.file();
        LabBook closing = desk.turnAway();
        turning.window().opening(place);
        LocalDateTime now = tools.now();
        tools.tasks()
                .run(
                        doing,
                        progress -> {
                            closing.close();
                            Answer<BookCopy> answer = work.call(progress);
                            return answer.value().isEmpty()
                                    ? new Outcome(answer, Optional.empty())
                                    // What stands in the place by now is read in any case.
                                    : new Outcome(
                                            answer,
                                            Optional.of(
                                                    Turning.read(tools.shelf().open(place), now, Progress.UNHEARD)));
                        },
                        outcome -> outcome.reading()
                                .ifPresentOrElse(
                                        reading -> opened(place, reading, outcome.answer()),
                                        () -> refused(
                                                place, before, outcome.answer().problems())),
                        failure -> failed(place, before, doing, failure));
    }

    private void opened(Path place, Reading reading, Answer<BookCopy> answer) {
        desk.turnTo(reading);
        turning.window().opened(place);
        tell(place, answer.value().flatMap(BookCopy::movedAside), answer.problems());
    }

    private void tell(Path place, Optional<Path> movedAside, List<Problem> doubts) {
        desk.ask(new Question.HeadOfBook(), head -> tell(new BookCopy(place, head, movedAside), doubts));
    }

    private void tell(BookCopy copy, List<Problem> doubts) {
        String done = texts.get(
                "restore.done",
                copy.file().toString(),
                copy.head().entries(),
                copy.head().printed());
        String aside = copy.movedAside()
                .map(moved -> "\n\n" + texts.get("restore.aside", moved.toString()))
                .orElse("");
        tools.asker().tell(over, texts.get("restore.title"), done + aside);
        if (!doubts.isEmpty()) {
            tools.asker().problems(over, texts.get("restore.title"), doubts);
        }
    }

    private void refused(Path place, Optional<Path> before, List<Problem> problems) {
        if (before.isEmpty()) {
            String why =
                    problems.stream().map(tools.problemText()::sayWithPlace).collect(Collectors.joining("\n"));
            turning.window()
                    .troubled(new Trouble(
                            place, why, false, place.equals(turning.invented().demo())));
        } else {
            tools.asker().problems(over, texts.get("restore.refused.title"), problems);
            turning.back(before.get());
        }
    }

    private void failed(Path place, Optional<Path> before, String doing, Exception failure) {
        if (before.isEmpty()) {
            turning.failed(place, doing, failure);
        } else {
            tools.asker().failure(over, doing, failure);
            turning.back(before.get());
        }
    }
}
