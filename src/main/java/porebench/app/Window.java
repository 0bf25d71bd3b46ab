package porebench.app;

import java.nio.file.Path;
import porebench.command.Ports;
import porebench.command.Surroundings;

/** Opens the workbench. */
@FunctionalInterface
interface Window {
    /** Opens the window on a lab book and returns at once; the program goes on until the window is closed. */
    void open(Surroundings here, Ports ports, Path book);
}
