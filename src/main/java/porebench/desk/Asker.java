package porebench.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import porebench.desk.form.TwoVersions;
import porebench.method.Problem;
import porebench.port.OutputFile;
import porebench.record.book.Stamp;

/** Everything the window asks or tells a person in a dialog; tests answer from a script. */
public interface Asker {
    /**
     * Asks for a reason that will stand in the lab book; empty when the person thought better of it.
     *
     * @param actName what is done with the reason, as the button says it
     */
    Optional<String> reason(JComponent over, String title, String question, String actName);

    /**
     * Asks for a remark that will stand in the lab book, and to go on; blank when there is none, empty when the person thought better
     * of it.
     *
     * @param actName what is done, as the button says it
     */
    Optional<String> remark(JComponent over, String title, String question, String actName);

    /** Asks for the name of something of the person's own, which stands in no lab book; empty when the person thought better of it. */
    Optional<String> name(JComponent over, String title, String question, String actName);

    /** Asks to go on; the button is named for the action, and Enter alone does not press it. */
    boolean confirm(JComponent over, String title, String question, String actionName);

    /**
     * Shows two versions of a record side by side, and asks in each line which one to take.
     *
     * @param record what the record is called
     * @param theirs who kept the other version, when and why
     * @param number the number of the other version
     * @param lines in which they differ
     * @return whether theirs is taken, one a line; empty when the person thought better of it
     */
    Optional<List<Boolean>> both(
            JComponent over, String record, Stamp theirs, int number, List<TwoVersions.Line> lines);

    /** Asks for a file to read. */
    Optional<Path> fileToOpen(JComponent over, String title, String extension);

    /** Asks for one or more files to read; none when the person thought better of it. */
    List<Path> filesToOpen(JComponent over, String title, String extension);

    /**
     * Asks for a file to read, of one of some kinds.
     *
     * @param extensions what the names of such files end in, without the dot
     */
    default Optional<Path> fileToOpen(JComponent over, String title, List<String> extensions) {
        return fileToOpen(over, title, extensions.get(0));
    }

    /** Asks for a file to write; one that is there may be replaced only when the person says so. */
    Optional<OutputFile> fileToWrite(JComponent over, String title, String suggestedName);

    /**
     * Asks for a file to write, of one of some kinds, which the ending of its name tells; one that is there
     * may be replaced only when the person says so.
     *
     * @param suggestedName a name with the ending of the kind that is offered first
     */
    Optional<OutputFile> fileToWrite(JComponent over, String title, String suggestedName, List<Kind> kinds);

    /** Asks for the name of a file that is not there yet; one that is there is refused. */
    Optional<Path> newFile(JComponent over, String title, String suggestedName);

    /**
     * Asks for the name of a lab book that something is to take the place of; where one is there, the person is asked first.
     *
     * @param ifThere says the question about the file that is there
     * @param actionName what the person says yes to
     */
    Optional<Path> place(
            JComponent over, String title, String suggestedName, Function<Path, String> ifThere, String actionName);

    /** Asks for a folder to write files into. */
    Optional<Path> folder(JComponent over, String title);

    /** Tells something in words. */
    void tell(JComponent over, String title, String words);

    /** Shows problems that belong to no field in sight. */
    void problems(JComponent over, String title, List<Problem> problems);

    /** Tells that the file, the database or the printer failed: what was being done, why, and what is safe. */
    void failure(JComponent over, String doing, Exception cause);

    /** Returns who works here, asking once when nobody said so yet; empty when the person would not say. */
    Optional<String> person(JComponent over);

    /**
     * A kind of file.
     *
     * @param ending how names of such files end, in lower case and without the dot
     * @param words what such a file is
     */
    record Kind(String ending, String words) {
        /** Returns the ending of a file's name, in lower case and without the dot; empty when it has none. */
        public static String endingOf(Path file) {
            String name = String.valueOf(file.getFileName());
            int dot = name.lastIndexOf('.');
            return dot < 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
        }
    }
}
