package porebench.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import porebench.desk.form.TwoVersions;
import porebench.method.Problem;
import porebench.port.OutputFile;
import porebench.record.book.Stamp;

/**
 * Answers from a script and writes down what was asked and told. A question without an answer in the script is taken
 * back by the person: empty, no, keep editing.
 */
public class ScriptedAsker implements Asker {
    public final Deque<String> reasons = new ArrayDeque<>();
    /** What is said beside an act, in their order. */
    public final Deque<String> said = new ArrayDeque<>();

    public final Deque<Boolean> confirmations = new ArrayDeque<>();
    public final Deque<Path> filesToOpen = new ArrayDeque<>();
    public final Deque<List<Path>> manyToOpen = new ArrayDeque<>();
    public final Deque<Path> filesToWrite = new ArrayDeque<>();
    public final Deque<Path> newFiles = new ArrayDeque<>();
    public final Deque<Path> places = new ArrayDeque<>();
    public final Deque<Path> folders = new ArrayDeque<>();
    public final List<String> told = new ArrayList<>();
    public final List<TwoVersions.Line> compared = new ArrayList<>();
    /** Says of each line whether theirs is taken. */
    public final Deque<Predicate<TwoVersions.Line>> choices = new ArrayDeque<>();

    public final List<String> acts = new ArrayList<>();
    public final List<String> asked = new ArrayList<>();
    /** What was asked to be confirmed, in full. */
    public final List<String> questions = new ArrayList<>();

    public final List<Problem> problemsShown = new ArrayList<>();
    public final List<Exception> failures = new ArrayList<>();
    public @Nullable String person = "Test Person";
    private @Nullable DeskModel desk;

    /** Writes the person's name into a desk, as the real one does. */
    public void serve(DeskModel served) {
        desk = served;
    }

    @Override
    public Optional<String> reason(JComponent over, String title, String question, String actName) {
        asked.add(title);
        acts.add(actName);
        return Optional.ofNullable(reasons.poll());
    }

    /** Goes on when the next confirmation says so; what is said then is the next remark, or nothing. */
    @Override
    public Optional<String> remark(JComponent over, String title, String question, String actName) {
        acts.add(actName);
        return confirm(over, title, question, actName)
                ? Optional.of(said.isEmpty() ? "" : said.poll())
                : Optional.empty();
    }

    @Override
    public Optional<String> name(JComponent over, String title, String question, String actName) {
        return reason(over, title, question, actName);
    }

    @Override
    public boolean confirm(JComponent over, String title, String question, String actionName) {
        asked.add(title);
        questions.add(question);
        return Boolean.TRUE.equals(confirmations.poll());
    }

    @Override
    public Optional<List<Boolean>> both(
            JComponent over, String record, Stamp theirs, int number, List<TwoVersions.Line> lines) {
        asked.add(record);
        compared.addAll(lines);
        return Optional.ofNullable(choices.poll())
                .map(choice -> lines.stream().map(choice::test).toList());
    }

    @Override
    public Optional<Path> fileToOpen(JComponent over, String title, String extension) {
        asked.add(title);
        return Optional.ofNullable(filesToOpen.poll());
    }

    @Override
    public List<Path> filesToOpen(JComponent over, String title, String extension) {
        asked.add(title);
        return Optional.ofNullable(manyToOpen.poll()).orElse(List.of());
    }

    @Override
    public Optional<OutputFile> fileToWrite(JComponent over, String title, String suggestedName) {
        asked.add(title);
        // A person who is asked about a file that is there lets it be replaced.
        return Optional.ofNullable(filesToWrite.poll()).map(file -> new OutputFile(file, Files.exists(file)));
    }

    @Override
    public Optional<OutputFile> fileToWrite(JComponent over, String title, String suggestedName, List<Kind> kinds) {
        return fileToWrite(over, title, suggestedName);
    }

    @Override
    public Optional<Path> newFile(JComponent over, String title, String suggestedName) {
        asked.add(title);
        return Optional.ofNullable(newFiles.poll());
    }

    @Override
    public Optional<Path> place(
            JComponent over, String title, String suggestedName, Function<Path, String> ifThere, String actionName) {
        asked.add(title);
        return Optional.ofNullable(places.poll())
                .filter(file -> !Files.exists(file) || confirm(over, ifThere.apply(file), "", actionName));
    }

    @Override
    public Optional<Path> folder(JComponent over, String title) {
        asked.add(title);
        return Optional.ofNullable(folders.poll());
    }

    @Override
    public void tell(JComponent over, String title, String words) {
        told.add(words);
    }

    @Override
    public void problems(JComponent over, String title, List<Problem> problems) {
        asked.add(title);
        problemsShown.addAll(problems);
    }

    @Override
    public void failure(JComponent over, String doing, Exception cause) {
        asked.add(doing);
        failures.add(cause);
    }

    @Override
    public Optional<String> person(JComponent over) {
        if (desk != null && desk.person().isBlank() && person != null) {
            desk.setPerson(person);
        }
        return Optional.ofNullable(person);
    }
}
