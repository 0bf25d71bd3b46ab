package porebench.app;

import java.nio.file.Path;
import porebench.command.Ports;
import porebench.command.Surroundings;
import porebench.desk.Settings;
import porebench.desk.frame.Workbench;

/** The workbench window with what it needs from outside. */
final class WorkbenchWindow {
    private WorkbenchWindow() {}

    static void open(Surroundings here, Ports ports, Path book) {
        Workbench.start(
                ports.shelf().get(),
                ports.sheets().get(),
                ports.press().get(),
                here.clock(),
                here.zone(),
                here.locale(),
                book,
                Settings.ofUser());
    }
}
