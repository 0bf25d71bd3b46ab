package porebench.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import porebench.method.Problem;

/** Everything the window asks or tells a person in a dialog; tests answer from a script. */
public interface Asker {
    /** Asks for a reason that will stand in the lab book; empty when the person thought better of it. */
    Optional<String> reason(JComponent over, String title, String question);

    /** Asks to go on; the button is named for the action. */
    boolean confirm(JComponent over, String title, String question, String actionName);

    /** Asks for a file to read. */
    Optional<Path> fileToOpen(JComponent over, String title, String extension);

    /** Asks for a file to write; asks again before one that is there would be replaced. */
    Optional<Path> fileToWrite(JComponent over, String title, String suggestedName);

    /** Asks for the name of a file that is not there yet; one that is there is refused. */
    Optional<Path> newFile(JComponent over, String title, String suggestedName);

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

    /** Asks what shall become of an unsaved draft before the window turns to something else. */
    DraftAnswer draft(JComponent over, String pageTitle);

    /** What shall become of an unsaved draft. */
    enum DraftAnswer {
        KEEP_EDITING,
        SAVE,
        DROP
    }
}
