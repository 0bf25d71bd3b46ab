package porebench.app;

import java.io.IOException;
import java.nio.file.Path;
import porebench.desk.frame.MarkFiles;

/** Writes the program's mark as files, by which the build of an installer shows it on a desktop. Needs no display. */
final class DesktopMark {
    private DesktopMark() {}

    /**
     * Runs it.
     *
     * @param arguments the folder to write to
     */
    public static void main(String[] arguments) throws IOException {
        MarkFiles.write(Path.of(arguments[0]));
    }
}
