package porebench.app;

import java.nio.file.Path;
import porebench.command.Ports;
import porebench.command.Surroundings;

/** Opens the workbench. */
@FunctionalInterface
interface Window {
    /** Opens the window on a lab book, which is begun with the demo laboratory when it is not there, and returns at once. */
    void open(Surroundings here, Ports ports, Path demoBook);
}
