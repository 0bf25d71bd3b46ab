package porebench.desk.frame.dialog;

import java.awt.Component;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import porebench.desk.form.Commands;
import porebench.desk.form.Copying;
import porebench.desk.form.SteadyButton;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;

/** A button that copies what a dialog says, for whoever is to be told of it; it says whether that went well. */
public final class CopyButton {
    private CopyButton() {}

    /** Makes the button for a page. */
    public static SteadyButton on(String name, Texts texts, Supplier<String> words) {
        Action[] copy = new Action[1];
        copy[0] = Commands.of(
                texts.get("copy.act"), () -> Commands.say(copy[0], texts.get(said(Copying.copy(words.get())))));
        SteadyButton button = Commands.button(name, copy[0]);
        button.keepRoomFor(texts.get("copy.done"));
        button.keepRoomFor(texts.get("copy.held"));
        return button;
    }

    /** Adds the button to a dialog, which stays open. */
    static void on(AskDialog dialog, Texts texts, Supplier<String> words) {
        JButton button = dialog.button("copy", texts.get("copy.act").replaceFirst("&", ""));
        dialog.closesOnlyIf(button, () -> {
            button.setText(texts.get(said(Copying.copy(words.get()))));
            return false;
        });
    }

    /** Returns the key of the words for what came of copying. */
    static String said(boolean copied) {
        return copied ? "copy.done" : "copy.held";
    }

    /** Shows something to read, with a button that copies its words; Enter and Escape close it. */
    public static void read(
            @Nullable Component over, String title, JComponent content, Supplier<String> words, Texts texts) {
        AskDialog dialog = new AskDialog(over, title, content);
        on(dialog, texts, words);
        dialog.button("close", texts.get("ask.close"));
        dialog.askSafely();
    }

    /** Returns problems as lines to be copied, errors first as they are shown. */
    static String words(List<Problem> problems, ProblemText problemText, Texts texts) {
        return Stream.concat(
                        problems.stream().filter(Problem::isError),
                        problems.stream().filter(problem -> !problem.isError()))
                .map(problem -> texts.get(problem.isError() ? "problems.error" : "problems.warning") + ": "
                        + problemText.sayWithPlace(problem))
                .collect(Collectors.joining("\n"));
    }
}
