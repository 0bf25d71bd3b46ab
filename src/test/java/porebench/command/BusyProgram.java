package porebench.command;

import java.nio.file.Path;
import porebench.command.Terminal.Said;

/** A program that imports trials and issues factors one after the other, and says what was acknowledged, until it is killed. */
public final class BusyProgram {
    private static final int MOST = 500;

    private BusyProgram() {}

    public static void main(String[] arguments) {
        Path folder = Path.of(arguments[0]);
        Terminal terminal = new Terminal(folder);
        int first = Integer.parseInt(arguments[1]);
        System.out.println("begins");
        for (int number = first; number < first + MOST; number++) {
            say(importing(folder, terminal, number), "import " + number);
            say(issuing(terminal, number), "issue " + number);
        }
    }

    private static void say(Said said, String what) {
        System.out.println(said.status() == 0 ? what : "refused " + what + " " + said.out());
    }

    /** Imports one trial of a determination of its own. */
    public static Said importing(Path folder, Terminal terminal, int number) {
        LabFiles.write(
                folder,
                "trial-" + number + ".csv",
                LabFiles.TRIAL_COLUMNS + LabFiles.trial("K-" + number, "M-1", 3, "5.4", "no"));
        return terminal.json("import", "--book", "lab.book", "trial-" + number + ".csv");
    }

    public static Said issuing(Terminal terminal, int number) {
        return terminal.json(
                "issue",
                "--book",
                "lab.book",
                "--mix-id",
                "M-1",
                "--reason",
                "r" + number,
                "--override-by",
                "M. Ash",
                "--override-reason",
                "looked at");
    }
}
