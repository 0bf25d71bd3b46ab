package porebench.app;

import java.nio.file.Path;
import java.util.Optional;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;

/** Opens the workbench. */
@FunctionalInterface
interface Window {
    /**
     * Opens the window and returns at once; the program goes on until the window is closed. A lab book that cannot be opened
     * does not keep the window from opening: it says why.
     *
     * @param data holds the demo lab book, made when it is wanted and not there, and what is typed and not saved
     * @param book the lab book to open; when empty the one used last, and where none was the demo's
     */
    void open(Machine here, Ports ports, DataFolder data, Optional<Path> book);
}
