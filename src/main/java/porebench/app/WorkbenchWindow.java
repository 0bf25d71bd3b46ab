package porebench.app;

import java.nio.file.Path;
import java.util.Optional;
import porebench.command.DemoRun;
import porebench.command.Ports;
import porebench.command.Surroundings;
import porebench.desk.Settings;
import porebench.desk.frame.DemoFile;
import porebench.desk.frame.Outside;
import porebench.desk.frame.Workbench;

/** The workbench window with what it needs from outside. */
final class WorkbenchWindow {
    private WorkbenchWindow() {}

    static void open(Surroundings here, Ports ports, Path demo, Optional<Path> book) {
        Workbench.start(
                new Outside(
                        ports.shelf().get(),
                        ports.sheets().get(),
                        ports.press().get(),
                        here.clock(),
                        here.zone(),
                        here.locale(),
                        Settings.ofUser(),
                        new DemoFile(demo, file -> new DemoRun(here, ports).makeBook(file)),
                        here.log()),
                book);
    }
}
